package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.FRIDAY;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.at;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Order;
import strickle.plan.promise.Latest;
import strickle.plan.promise.Latest.Way;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.PromiseRequest;
import strickle.plan.promise.Promising;
import strickle.plan.promise.Slip;

/**
 * Promises that can be worked out by head: one tile is poured from 9:00 to 9:35 and out at 13:33; a
 * second one in the same tray is poured then, and out on Tuesday at 9:06.
 */
class PromisingTest {

  private static final OffsetDateTime FIRST = at(MONDAY + "13:33");
  private static final OffsetDateTime SECOND = at(TUESDAY + "09:06");

  private static PromiseRequest request(int tiles) {
    return new PromiseRequest("tile", tiles, Optional.empty(), OptionalLong.of(200), 0);
  }

  private static PromiseRequest by(String latest) {
    Optional<LocalDateTime> moment = Optional.of(LocalDateTime.parse(latest));
    return new PromiseRequest("tile", 1, moment, OptionalLong.of(200), 0);
  }

  /** The promise on top of the book's plan; whatever it offers passes the audit. */
  private static Promise promise(Book book, PromiseRequest request) {
    Promise promise = Promising.of(book, Planned.of(book), request);
    Stream.of(promise.kept(), promise.still(), promise.pressed())
        .flatMap(Optional::stream)
        .forEach(offer -> Planned.assertValid(offer.book(), offer.plan()));
    promise.latest().flatMap(Latest::offer).ifPresent(PromisingTest::assertValid);
    return promise;
  }

  private static void assertValid(Offer offer) {
    Planned.assertValid(offer.book(), offer.plan());
  }

  private static OffsetDateTime kept(Promise promise) {
    return promise.kept().orElseThrow().ready();
  }

  private static Book oneTile(String due) {
    return Studios.tiles(Studios.order("A", 1, due));
  }

  @Test
  void anOrderThatWouldBeLateIsServedFirst() {
    Promise promise = promise(oneTile(MONDAY + "17:00"), request(1));
    assertEquals(SECOND, kept(promise));
    assertEquals(List.of(), promise.kept().orElseThrow().slips());
    assertEquals(Optional.empty(), promise.still());
  }

  @Test
  void whoWouldSlipIsToldWithBeforeAndAfter() {
    Offer pressed = promise(oneTile(MONDAY + "17:00"), request(1)).pressed().orElseThrow();
    assertEquals(FIRST, pressed.ready());
    // From Monday 17:00 to Tuesday 9:06.
    assertEquals(List.of(new Slip("A", FIRST, SECOND, 0, 16 * 60 + 6)), pressed.later());
  }

  @Test
  void anOrderWithTimeToSpareWaitsAndIsNamed() {
    Promise promise = promise(oneTile(FRIDAY + "17:00"), request(1));
    assertEquals(FIRST, kept(promise));
    Offer kept = promise.kept().orElseThrow();
    assertEquals(List.of(new Slip("A", FIRST, SECOND, 0, 0)), kept.slips());
    assertEquals(List.of(), kept.later());
    assertEquals(Optional.empty(), promise.pressed());
  }

  @Test
  void aLateOrderGetsNoLater() {
    // Due before anything can be ready: it is late whatever is done, and served first all the same.
    Promise promise = promise(oneTile(MONDAY + "09:00"), request(1));
    assertEquals(SECOND, kept(promise));
    assertEquals(Optional.empty(), promise.pressed());
    assertEquals(273, promise.kept().orElseThrow().plan().orders().get(0).lateMinutes());
  }

  @Test
  void whatIsInStockAndNobodyNeedsIsReadyAtOnce() {
    Book book = Studios.piece(oneTile(MONDAY + "17:00"), "onHand", 2);
    Promise promise = promise(book, request(1));
    assertEquals(Studios.FROM, kept(promise));
    assertEquals(List.of(), promise.kept().orElseThrow().runs());
    assertEquals(List.of(), promise.kept().orElseThrow().slips());
  }

  @Test
  void stockThatAnOrderNeedsTodayIsNotTakenFromIt() {
    Book book = Studios.piece(oneTile(MONDAY + "09:00"), "onHand", 1);
    assertEquals(FIRST, kept(promise(book, request(1))));
  }

  @Test
  void stockThatAnOrderNeedsLaterIsReplaced() {
    Book book = Studios.piece(oneTile(FRIDAY + "09:00"), "onHand", 1);
    Promise promise = promise(book, request(1));
    assertEquals(Studios.FROM, kept(promise));
    assertEquals(FIRST, promise.kept().orElseThrow().slips().get(0).ready());
  }

  @Test
  void aStudioWithNothingToDoBeginsAtOnce() {
    Promise promise = promise(Studios.tiles(), request(2));
    assertEquals(SECOND, kept(promise));
    assertEquals(2, promise.kept().orElseThrow().runs().size());
    assertEquals(Optional.empty(), promise.pressed());
  }

  @Test
  void aLotThatIsPlannedAnywayIsJoinedWhereThatIsSooner() {
    // Poured together from 9:00 to 9:50 they set until 13:42; A is out at 13:48 and the cup at
    // 13:54. By itself the cup is poured behind A until 10:10, sets until 14:02, is out at 14:08.
    Book book = oneTile(MONDAY + "13:50");
    book = BookWith.forms(book, Studios.form("tray", 1), Studios.form("bowl", 1));
    book = BookWith.moulds(book, Studios.mould("slab", "tray"), Studios.mould("cup", "bowl"));
    book = BookWith.pieces(book, Studios.piece("tile", "slab"), Studios.piece("cup", "cup"));
    PromiseRequest cup = new PromiseRequest("cup", 1, Optional.empty(), OptionalLong.of(200), 0);
    Promise promise = promise(book, cup);
    assertEquals(at(MONDAY + "13:54"), kept(promise));
    assertEquals(at(MONDAY + "14:08"), promise.still().orElseThrow().ready());
  }

  @Test
  void withNothingMovedEveryTaskStaysWhereItIs() {
    Book book = oneTile(MONDAY + "17:00");
    Plan plan = Planned.of(book);
    Promise promise = Promising.of(book, plan, request(3));
    List<String> tasks = Planned.tasks(promise.kept().orElseThrow().plan());
    assertTrue(tasks.containsAll(Planned.tasks(plan)), tasks.toString());
  }

  @Test
  void aDateThatNobodyMindsIsKept() {
    Latest latest =
        promise(oneTile(MONDAY + "17:00"), by(TUESDAY + "12:00")).latest().orElseThrow();
    assertEquals(Way.KEPT, latest.way());
    assertEquals(SECOND, latest.offer().orElseThrow().ready());
  }

  @Test
  void aDateForWhichOthersSlipIsPressed() {
    Latest latest = promise(oneTile(MONDAY + "17:00"), by(MONDAY + "15:00")).latest().orElseThrow();
    assertEquals(Way.PRESSED, latest.way());
    assertEquals(
        List.of("A"), latest.offer().orElseThrow().later().stream().map(Slip::order).toList());
  }

  @Test
  void aDateForWhichAnOrderBeforeItHasToGiveUpItsStockIsPressed() {
    Book book = Studios.piece(oneTile(MONDAY + "09:00"), "onHand", 1);
    Latest latest = promise(book, by(MONDAY + "10:00")).latest().orElseThrow();
    assertEquals(Way.PRESSED, latest.way());
    assertEquals(Studios.FROM, latest.offer().orElseThrow().ready());
    assertEquals(
        List.of(new Slip("A", Studios.FROM, FIRST, 0, 273)), latest.offer().orElseThrow().later());
    assertEquals(Optional.empty(), latest.alone());
  }

  @Test
  void aDateThatTheTileCannotMeetAloneIsImpossible() {
    Latest latest = promise(oneTile(MONDAY + "17:00"), by(MONDAY + "12:00")).latest().orElseThrow();
    assertEquals(Way.IMPOSSIBLE, latest.way());
    assertEquals(Optional.of(FIRST), latest.alone());
    assertEquals(Optional.empty(), latest.offer());
  }

  @Test
  void theNewOrderHasAnIdThatNobodyHas() {
    Order taken = Studios.order("promise", 1, MONDAY + "17:00");
    Promise promise = promise(Studios.tiles(taken), request(1));
    assertEquals("promise-2", promise.order());
    assertEquals("promise-2", promise.kept().orElseThrow().book().orders().getLast().id());
  }

  @Test
  void theSameSeedGivesTheSamePromise() {
    Book book = oneTile(MONDAY + "17:00");
    assertEquals(promise(book, request(3)), promise(book, request(3)));
  }

  @Test
  void everythingThatMakesNoSenseIsToldAtOnce() {
    Book book = oneTile(MONDAY + "17:00");
    PromiseRequest nonsense =
        new PromiseRequest(
            "tyle",
            0,
            Optional.of(LocalDateTime.parse("2027-04-04T23:59")),
            Optional.of("A"),
            "",
            OptionalLong.empty(),
            0);
    Plan plan = Planned.of(book);
    List<Fault> faults =
        assertThrows(Faulty.class, () -> Promising.of(book, plan, nonsense)).faults();
    List<String> paths = faults.stream().map(Fault::path).toList();
    assertEquals(List.of(".piece", ".quantity", ".latest", ".order"), paths);
    assertTrue(faults.get(0).right().contains("did you mean \"tile\"?"), faults.toString());
  }

  @Test
  void moreThanCanBePlannedIsRefused() {
    Book book = oneTile(MONDAY + "17:00");
    Plan plan = Planned.of(book);
    List<Fault> faults =
        assertThrows(Faulty.class, () -> Promising.of(book, plan, request(20_000))).faults();
    assertEquals(".quantity, as it would be $.orders", faults.get(0).path());
  }
}
