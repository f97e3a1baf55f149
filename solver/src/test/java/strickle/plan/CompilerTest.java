package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.ZONE;
import static strickle.plan.Studios.form;
import static strickle.plan.Studios.mix;
import static strickle.plan.Studios.mould;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.pin;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Studios.weekdays;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Climate;
import strickle.book.Draft;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.SpecialDay;
import strickle.book.Station;
import strickle.shop.Clock;
import strickle.shop.Due;
import strickle.shop.Family;
import strickle.shop.FixedLot;
import strickle.shop.Kind;
import strickle.shop.Resource;
import strickle.shop.Shop;

class CompilerTest {

  private static final int DAYS = 30;
  private static final String DUE = "2027-04-12T12:00";

  /** Two mixes, three pieces of which the first is not ordered, two forms, a station. */
  private static Book book() {
    return Draft.of(tiles())
        .people(weekdays("ana"), weekdays("ben"))
        .stations(new Station("rack", "rack", 7))
        .forms(form("tray", 2), form("lid", 3))
        .moulds(mould("slab", "tray"))
        .mixes(mix("grey"), Altered.of(mix("slate"), "workingMinutes", 30))
        .pieces(piece("none", "slab"), piece("tile", "slab"), lidded())
        .orders(
            SampleBook.order("B", "lidded", 2, "2027-04-13T12:00"),
            SampleBook.order("A", "tile", 3, DUE))
        .book();
  }

  private static Piece lidded() {
    return Altered.of(Altered.of(piece("lidded", "slab"), "mix", "grey"), "finalDryHours", 1.5);
  }

  private static StudioShop compiled(Book book) {
    StudioTime time = new StudioTime(FROM.toInstant(), ZONE);
    return Compiler.compile(book, time, DAYS * 24 * 60, Needs.of(book), PinnedLot.of(book));
  }

  @Test
  void onlyWhatIsNeededIsMade() {
    StudioShop studio = compiled(book());
    assertEquals(List.of("tile", "lidded"), studio.pieces().stream().map(Piece::id).toList());
    assertEquals(List.of(3, 2), studio.shop().kinds().stream().map(Kind::jobs).toList());
  }

  @Test
  void aPieceBecomesAKindOfItsMixWithWhatACastingTakesOfALot() {
    Kind lidded = compiled(book()).shop().kinds().get(1);
    assertEquals(0, lidded.family());
    assertEquals(90, lidded.tailMinutes());
    assertEquals(2, lidded.chain().size());
    assertEquals(5, lidded.amounts().get(0));
  }

  @Test
  void aMixBecomesAFamilyThatPoursWithinItsWorkingTimeAndTheLongestWindow() {
    List<Family> families = compiled(book()).shop().families();
    assertEquals(2, families.size());
    Family slate = families.get(1);
    assertEquals(20, slate.sharedMinutes());
    assertEquals(8, slate.tailMinutes());
    assertEquals(30, slate.limits().get(0));
    assertEquals(8 * 60, slate.longestMinutes());
  }

  @Test
  void aLotHoldsAsManyCastingsAsTheBatchLimitAndNotOneMore() {
    for (double limit : List.of(3000.0, 3000.001, 2999.999, 2999.999998, 3999.9, 4000.0)) {
      Shop shop = compiled(Studios.studio(book(), "batchLimitGrams", limit)).shop();
      long most = shop.families().get(0).limits().get(1) / shop.kinds().get(1).amounts().get(1);
      assertEquals((long) (limit / 1000), most, () -> limit + " g");
    }
  }

  @Test
  void formsAndStationsBecomeResourcesFormsFirst() {
    assertEquals(
        List.of(new Resource("tray", 2), new Resource("lid", 3), new Resource("rack", 7)),
        compiled(book()).shop().resources());
  }

  @Test
  void everybodyBecomesAWorkerWithTheirHours() {
    Shop shop = compiled(book()).shop();
    assertEquals(2, shop.workers().size());
    assertEquals(22 * 8 * 60, shop.workers().get(1).workingMinutes());
    assertEquals(9 * 60, shop.workers().get(1).opens(0));
  }

  @Test
  void theLongestWindowOfASingleDayDoesNotMakeLotsLarger() {
    SpecialDay day =
        new SpecialDay(LocalDate.parse("2027-04-06"), List.of(SampleBook.hours(6, 22)));
    Book book = BookWith.people(book(), Altered.of(weekdays("ana"), "exceptions", List.of(day)));
    assertEquals(8 * 60, compiled(book).shop().families().get(0).longestMinutes());
  }

  @Test
  void ordersBecomeDueDatesInTheOrderTheyAreServed() {
    StudioShop studio = compiled(book());
    int due = 7 * 24 * 60 + 12 * 60;
    assertEquals(
        List.of(
            new Due("A", due, 1, List.of(new Due.Need(0, 3))),
            new Due("B", due + 24 * 60, 1, List.of(new Due.Need(1, 2)))),
        studio.shop().dues());
    assertEquals(List.of("A", "B"), studio.orders().stream().map(Order::id).toList());
    assertEquals(60, studio.shop().lateUnitMinutes());
  }

  @Test
  void weightsWithDecimalsAreMadeWholeByOnePowerOfTen() {
    Book book =
        tiles(
            Altered.of(order("A", 1, DUE), "weight", new BigDecimal("0.25")),
            Altered.of(order("B", 1, DUE), "weight", new BigDecimal("3.0")),
            Altered.of(order("C", 1, DUE), "weight", new BigDecimal("200")),
            Altered.of(order("D", 1, DUE), "weight", new BigDecimal("0")));
    StudioShop studio = compiled(book);
    assertEquals(100, studio.weightScale());
    assertEquals(
        List.of(20000L, 300L, 25L, 0L), studio.shop().dues().stream().map(Due::weight).toList());
  }

  @Test
  void wholeWeightsStayAsTheyAre() {
    Book book = tiles(Altered.of(order("A", 1, DUE), "weight", new BigDecimal("2E+2")));
    assertEquals(1, compiled(book).weightScale());
    assertEquals(200, compiled(book).shop().dues().get(0).weight());
  }

  @Test
  void anOrderFromStockIsADueDateThatWaitsForNothing() {
    Book book = Studios.piece(tiles(order("A", 1, DUE)), "onHand", 1);
    StudioShop studio = compiled(book);
    assertEquals(List.of(), studio.shop().kinds());
    assertEquals(List.of(), studio.shop().dues().get(0).needs());
  }

  @Test
  void pinsBecomeSettledLots() {
    Book book = BookWith.pins(book(), pin("tile", 2, MONDAY + "10:15", "ben"));
    StudioShop studio = compiled(book);
    assertEquals(
        List.of(new FixedLot(1, 10 * 60 + 15, List.of(new FixedLot.Part(0, 2)))),
        studio.shop().fixed());
    assertEquals(List.of(List.of(0)), studio.fixedPins());
  }

  @Test
  void oneOfEachLeavesOrdersAndPinsAside() {
    Book book = BookWith.pins(book(), pin("tile", 2, MONDAY + "10:15", "ben"));
    StudioTime time = new StudioTime(FROM.toInstant(), ZONE);
    Shop shop = Compiler.oneOfEach(book, time, 1000).shop();
    assertEquals(List.of(1, 1, 1), shop.kinds().stream().map(Kind::jobs).toList());
    assertEquals(List.of(), shop.dues());
    assertEquals(List.of(), shop.fixed());
  }

  @Test
  void theRoomsClockIsExactBeforeTheFirstClimateAndWithout() {
    Clock clock = compiled(book()).shop().clocks().get(Chains.ROOM);
    assertEquals(20 * 60, clock.end(0, 20));
    assertEquals(24 * 60, clock.end(4 * 60, 20));
  }

  /**
   * EN 1992-1-1 Annex B, B.10, the formula read in the page on the file formats: an hour at 18 °C
   * is worth exp(13.65 − 4000/291) = 0.908733 hours, so 20 hours take 1320.52 minutes.
   */
  @Test
  void theRoomsClockRunsAtThePaceOfTheClimateFromItsMomentOn() {
    assertEquals(1321, room("2027-04-05T00:00").end(0, 20));
    assertEquals(1321, room("2027-01-01T00:00").end(0, 20));
    // Ten hours at the full pace, then 660.26 minutes for the other ten.
    assertEquals(600 + 661, room("2027-04-05T10:00").end(0, 20));
    assertEquals(1200, room("2027-04-05T20:00").end(0, 20));
  }

  @Test
  void ofSeveralClimatesBeforeTheBeginningTheLastCounts() {
    Book book =
        Studios.studio(
            book(),
            "climate",
            List.of(climate("2027-01-01T00:00", 35), climate("2027-02-01T00:00", 18)));
    assertEquals(1321, compiled(book).shop().clocks().get(Chains.ROOM).end(0, 20));
  }

  private static Clock room(String from) {
    Book book = Studios.studio(book(), "climate", List.of(climate(from, 18)));
    return compiled(book).shop().clocks().get(Chains.ROOM);
  }

  private static Climate climate(String from, double temperatureC) {
    return new Climate(LocalDateTime.parse(from), temperatureC, OptionalDouble.empty());
  }

  @Test
  void duesLongPastAreNegativeMinutes() {
    Shop shop = compiled(tiles(order("A", 1, "1970-01-01T00:00"))).shop();
    assertTrue(shop.dues().get(0).at() < -30_000_000);
  }
}
