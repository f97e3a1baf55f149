package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.at;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Told.away;
import static strickle.plan.Told.broken;
import static strickle.plan.Told.poured;
import static strickle.plan.Told.scrapped;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Fault;
import strickle.book.Faults;
import strickle.plan.audit.Audit;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.PromiseRequest;
import strickle.plan.promise.Promising;
import strickle.plan.promise.Stock;
import strickle.plan.replan.Happening;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.whatif.Answer;
import strickle.plan.whatif.Change;
import strickle.plan.whatif.ChangeText;
import strickle.plan.whatif.WhatIf;

/** What is asked of a plan of which a part has been carried out; all can be followed by head. */
class UnderWayTest {

  private static final String FAR = "2027-04-30T12:00";
  private static final String ELEVEN = MONDAY + "11:00";
  private static final Happening POURED = poured("L1", "ana", MONDAY + "09:10", MONDAY + "10:00");

  /**
   * One tray. L1 is poured late, at 9:10, and out at 13:52; L2 is poured at 13:58 at the soonest.
   */
  private static Plan underWay(Book book, Happening... happened) {
    ReplanRequest request =
        new ReplanRequest(at(ELEVEN), at(ELEVEN), List.of(happened), Effort.ofSchedules(50), 0);
    Plan plan = Replanning.of(book, Planned.of(book), request).run().plan();
    assertEquals(List.of(), Audit.of(book, plan));
    return plan;
  }

  private static Promise promise(Book book, Plan plan, int quantity, Optional<String> latest) {
    Optional<LocalDateTime> at = latest.map(LocalDateTime::parse);
    String piece = book.pieces().get(0).id();
    PromiseRequest request = new PromiseRequest(piece, quantity, at, OptionalLong.of(60), 0);
    Promise promise = Promising.of(book, plan, request);
    promise.kept().ifPresent(UnderWayTest::assertKeeps);
    promise.still().ifPresent(UnderWayTest::assertKeeps);
    promise.pressed().ifPresent(UnderWayTest::assertKeeps);
    return promise;
  }

  private static void assertKeeps(Offer offer) {
    assertEquals(List.of(), Audit.of(offer.book(), offer.plan()));
    List<String> tasks = Planned.tasks(offer.plan());
    assertTrue(tasks.contains("L1/pour ana 04-05T09:10 10:00"), tasks.toString());
  }

  @Test
  void aNewOrderIsPromisedBehindWhatIsUnderWay() {
    Book book = tiles(order("A", 1, MONDAY + "17:00"));
    Offer kept = promise(book, underWay(book, POURED), 1, Optional.empty()).kept().orElseThrow();
    // The tray is free at 13:58, the second tile poured by 14:33 and out on Tuesday at 9:00.
    assertEquals(at(TUESDAY + "09:06"), kept.ready());
    assertEquals(at(MONDAY + "13:52"), start(kept.plan(), "L1-1/demould"));
    assertEquals(List.of(), kept.slips());
  }

  private static OffsetDateTime start(Plan plan, String task) {
    return new Tasks(plan).get(task).orElseThrow().start();
  }

  @Test
  void othersMaySlipForItAndGetTheNext() {
    Book book = tiles(order("A", 1, MONDAY + "17:00"));
    Offer pressed =
        promise(book, underWay(book, POURED), 1, Optional.empty()).pressed().orElseThrow();
    assertEquals(at(MONDAY + "13:58"), pressed.ready());
    assertEquals("A", pressed.later().get(0).order());
    assertEquals(at(TUESDAY + "09:06"), pressed.later().get(0).ready());
  }

  @Test
  void aBuyerInAHurryGetsWhatIsUnderWayWhenTheOthersHaveTime() {
    Book book = tiles(order("A", 1, FAR));
    Offer kept = promise(book, underWay(book, POURED), 1, Optional.empty()).kept().orElseThrow();
    assertEquals(at(MONDAY + "13:58"), kept.ready());
    assertEquals(List.of("L1-1"), kept.runs());
    assertEquals("A", kept.slips().get(0).order());
  }

  @Test
  void aDateThatIsOverIsRefused() {
    Book book = tiles(order("A", 1, FAR));
    Plan plan = underWay(book, POURED);
    Optional<String> nine = Optional.of(MONDAY + "09:00");
    Fault fault = Faults.only(() -> promise(book, plan, 1, nine));
    assertEquals(".latest", fault.path());
    assertTrue(fault.right().contains("laid out anew"), fault.right());
  }

  @Test
  void whatStockGivesIsSaidAndWhomItWasMeantFor() {
    Book book = Studios.piece(tiles(order("A", 2, FAR)), "onHand", 1);
    Offer kept = promise(book, underWay(book, POURED), 1, Optional.of(ELEVEN)).kept().orElseThrow();
    assertEquals(at(ELEVEN), kept.ready());
    Stock stock = kept.stock().orElseThrow();
    assertEquals(1, stock.pieces());
    assertEquals(1, stock.onHand());
    assertEquals(List.of("A"), stock.meant().stream().map(Stock.Meant::order).toList());
    assertEquals(2, stock.meant().get(0).runs().size());
  }

  @Test
  void whoIsAwayAndWhatIsBrokenStaysSoForAPromise() {
    Book book = tiles(order("A", 1, FAR));
    Plan plan =
        underWay(
            book,
            POURED,
            away("ana", MONDAY + "15:00", TUESDAY + "11:00"),
            broken("tray", 1, ELEVEN, TUESDAY + "12:00"));
    Offer kept = promise(book, plan, 1, Optional.empty()).kept().orElseThrow();
    assertEquals(at(TUESDAY + "12:00"), start(kept.plan(), "L2/pour"));
  }

  @Test
  void noPlanThatGoesOnBeatsItsBound() {
    Book book = tiles(order("A", 1, MONDAY + "12:00"), order("B", 2, MONDAY + "16:00"));
    Plan plan = underWay(book, POURED);
    Bounds bounds = Bounding.of(book, plan);
    assertEquals(at(ELEVEN), bounds.from());
    assertEquals(at(MONDAY + "13:58"), bounds.orders().get(0).served());
    // Alone it would get the tile that is under way and one that is poured at once, at 11:00.
    assertEquals(at(MONDAY + "15:33"), bounds.orders().get(1).alone());
    // 50 minutes as told and the demould of 6, and of two more each a pour of 35 and 6.
    assertEquals(50 + 6 + 2 * 41, bounds.attendedMinutes());
    for (int i = 0; i < 2; i++) {
      assertTrue(!plan.orders().get(i).ready().isBefore(bounds.orders().get(i).served()));
    }
    assertTrue(
        bounds.weightedLateHours().compareTo(plan.totals().weightedLateHours()) <= 0,
        bounds + " and " + plan.totals());
  }

  @Test
  void aFormThatIsBrokenAndNotNeededAnyMoreHoldsUpNoBound() {
    Book book = tiles(order("A", 1, MONDAY + "12:00"));
    Plan plan = underWay(book, POURED, broken("tray", 1, MONDAY + "10:30"));
    assertEquals(2, Bounding.of(book, plan).weightedLateHours().intValueExact());
    assertEquals(at(MONDAY + "13:58"), Bounding.of(book, plan).orders().get(0).served());
  }

  @Test
  void lostPiecesServeNobodyInABoundOrAPromise() {
    Book book = tiles(order("A", 1, FAR));
    Plan plan = underWay(book, POURED, scrapped("L1-1", 1));
    Bounds bounds = Bounding.of(book, plan);
    assertEquals(at(MONDAY + "15:33"), bounds.orders().get(0).served());
    Offer kept = promise(book, plan, 1, Optional.empty()).kept().orElseThrow();
    assertEquals(plan.orders().get(0).ready(), kept.ready());
  }

  private static Answer tried(Book book, Plan plan, String change) {
    List<Change> changes = List.of(ChangeText.read(change));
    Optional<Effort> effort = Optional.of(Effort.ofSchedules(400));
    Answer answer = WhatIf.of(book, plan, changes, effort, 0, done -> {}).run();
    assertEquals(List.of(), Audit.of(book, answer.alone()));
    answer.tried().forEach(one -> assertEquals(List.of(), Audit.of(one.book(), one.plan())));
    return answer;
  }

  @Test
  void oneMoreFormHelpsFromNowOn() {
    Book book = tiles(order("A", 2, MONDAY + "15:30"));
    Answer answer = tried(book, underWay(book, POURED), "form:tray+1");
    Plan plan = answer.tried().get(0).plan();
    List<String> tasks = Planned.tasks(plan);
    assertTrue(tasks.contains("L1/pour ana 04-05T09:10 10:00"), tasks.toString());
    assertTrue(tasks.contains("L2/pour ana 04-05T11:00 11:35"), tasks.toString());
    assertEquals(1, plan.totals().lateOrders());
    assertTrue(
        plan.totals().weightedLateHours().compareTo(answer.alone().totals().weightedLateHours())
            < 0);
  }

  @Test
  void aWarmerRoomWarmsNothingThatIsOver() {
    Climate cool = new Climate(LocalDateTime.parse(MONDAY + "00:00"), 12, OptionalDouble.empty());
    Book book = Studios.studio(tiles(order("A", 1, MONDAY + "12:00")), "climate", List.of(cool));
    Plan plan = underWay(book, POURED);
    Answer answer = tried(book, plan, "room:20");
    List<Climate> climate = answer.tried().get(0).book().studio().climate();
    assertEquals(cool, climate.get(0));
    assertEquals(LocalDateTime.parse(ELEVEN), climate.get(1).from());
    assertEquals(20, climate.get(1).temperatureC());
    Plan warmer = answer.tried().get(0).plan();
    assertTrue(start(warmer, "L1-1/demould").isBefore(start(plan, "L1-1/demould")));
  }

  @Test
  void aChangeForADayThatIsOverIsRefused() {
    Book book = tiles(order("A", 1, FAR));
    Plan plan = underWay(book, POURED);
    Fault fault = Faults.only(() -> tried(book, plan, "helper:2027-04-04"));
    assertEquals(".changes[0]", fault.path());
    assertTrue(fault.right().contains("laid out anew"), fault.right());
  }
}
