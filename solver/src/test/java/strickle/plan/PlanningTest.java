package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.tiles;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Fault;
import strickle.book.Faults;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.SampleBook;
import strickle.book.SpecialDay;

/** What is asked of the planner and what comes of it; every plan is read by the audit as well. */
class PlanningTest {

  private static final String DUE = "2027-04-30T12:00";

  @Test
  void onePieceIsPouredAsSoonAsSomebodyIsThereAndTakenOutAsSoonAsItHasSet() {
    Plan plan = Planned.of(tiles(order("A", 1, DUE)));
    assertEquals(
        List.of("L1/pour ana 04-05T09:00 09:35", "L1-1/demould ana 04-05T13:27 13:33"),
        Planned.tasks(plan));
    OffsetDateTime ready = Studios.at(MONDAY + "13:33");
    assertEquals(List.of(new Ready("L1-1", ready)), plan.ready());
    assertEquals(List.of(new OrderOutcome("A", ready, 0, List.of())), plan.orders());
    assertEquals(new Totals(BigDecimal.ZERO, 0, 41, 1, ready), plan.totals());
  }

  @Test
  void aPlanSaysWhatItWasMadeFrom() {
    Plan plan = Planned.of(tiles(order("A", 1, DUE)), FROM, 5, -77);
    assertEquals("Kiln Lane Castings", plan.book());
    assertEquals(FROM, plan.from());
    assertEquals(-77, plan.seed());
  }

  @Test
  void theSampleBookIsPlanned() {
    Plan plan = Planned.of(SampleBook.example());
    assertEquals(4, plan.lots().stream().mapToInt(lot -> lot.runs().get(0).castings()).sum());
    assertEquals(0, plan.totals().lateOrders());
  }

  @Test
  void theSameBookSeedAndSchedulesGiveTheSamePlan() {
    Book book = busy();
    Plan first = Planned.of(book, FROM, 400, 3);
    assertEquals(first, Planned.of(book, FROM, 400, 3));
    assertNotEquals(first, Planned.of(book, FROM, 400, 4));
  }

  @Test
  void moreSchedulesGiveNoWorsePlan() {
    Totals few = Planned.of(busy(), FROM, 1, 0).totals();
    Totals many = Planned.of(busy(), FROM, 1000, 0).totals();
    int late = many.weightedLateHours().compareTo(few.weightedLateHours());
    assertTrue(late < 0 || (late == 0 && many.attendedMinutes() <= few.attendedMinutes()));
  }

  /** Ten orders for two pieces, due one day after the other, too much for one tray. */
  private static Book busy() {
    List<Order> orders = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      String due = LocalDate.parse("2027-04-06").plusDays(i) + "T12:00";
      orders.add(SampleBook.order("O" + i, i % 3 == 0 ? "brick" : "tile", 1 + i % 4, due));
    }
    return Draft.of(tiles())
        .forms(Studios.form("tray", 2))
        .pieces(piece("tile", "slab"), piece("brick", "slab"))
        .orders(orders.toArray(Order[]::new))
        .book();
  }

  @Test
  void withoutOrdersThePlanIsEmptyAndAllIsReadyAtOnce() {
    Plan plan = Planned.of(tiles());
    assertEquals(List.of(), plan.lots());
    assertEquals(List.of(), plan.tasks());
    assertEquals(List.of(), plan.waits());
    assertEquals(List.of(), plan.orders());
    assertEquals(new Totals(BigDecimal.ZERO, 0, 0, 0, FROM), plan.totals());
  }

  @Test
  void anEmptyBookHasAnEmptyPlan() {
    Book book = Draft.of(tiles()).people().forms().moulds().mixes().pieces().book();
    assertEquals(new Totals(BigDecimal.ZERO, 0, 0, 0, FROM), Planned.of(book).totals());
  }

  @Test
  void ordersFromStockAreReadyFromTheBeginning() {
    Book book = piece(tiles(order("A", 2, DUE), order("B", 1, DUE)), "onHand", 3);
    Plan plan = Planned.of(book);
    assertEquals(List.of(), plan.lots());
    assertEquals(
        List.of(
            new OrderOutcome("A", FROM, 0, List.of()), new OrderOutcome("B", FROM, 0, List.of())),
        plan.orders());
    assertEquals(FROM, plan.totals().lastReady());
  }

  @Test
  void anOrderDueBeforeTheBeginningIsLateFromItsDueOn() {
    Plan plan = Planned.of(tiles(order("A", 1, "2027-04-04T13:33")));
    OrderOutcome late = plan.orders().get(0);
    assertEquals(24 * 60, late.lateMinutes());
    assertFalse(late.because().isEmpty());
    assertEquals(1, plan.totals().lateOrders());
    assertEquals(0, BigDecimal.valueOf(24).compareTo(plan.totals().weightedLateHours()));
  }

  @Test
  void anOrderFromStockThatIsOverdueIsLateByThen() {
    Plan plan = Planned.of(piece(tiles(order("A", 1, "2027-04-04T23:00")), "onHand", 1));
    assertEquals(FROM, plan.orders().get(0).ready());
    assertEquals(60, plan.orders().get(0).lateMinutes());
  }

  @Test
  void anOrderDecadesOverdueIsPlannedAllTheSame() {
    Book book =
        tiles(
            Altered.of(order("A", 1, "1970-01-01T00:00"), "weight", new BigDecimal("1000000")),
            Altered.of(order("B", 1, DUE), "weight", new BigDecimal("0.000001")));
    assertEquals(1, Planned.of(book).totals().lateOrders());
  }

  @Test
  void startedHoursCountByTheWeightToItsLastDecimal() {
    // Ready at 13:33: four hours and 33 minutes late are five started hours.
    Book book =
        tiles(Altered.of(order("A", 1, MONDAY + "09:00"), "weight", new BigDecimal("0.125")));
    Totals totals = Planned.of(book).totals();
    assertEquals(
        0, new BigDecimal("0.625").compareTo(totals.weightedLateHours()), totals::toString);
  }

  @Test
  void anOrderWithoutWeightMayBeLateForNothing() {
    Book book = tiles(Altered.of(order("A", 1, MONDAY + "09:00"), "weight", BigDecimal.ZERO));
    Totals totals = Planned.of(book).totals();
    assertEquals(0, totals.weightedLateHours().signum());
    assertEquals(1, totals.lateOrders());
  }

  @Test
  void whatWeighsMoreIsMadeFirst() {
    for (String heavier : List.of("tile", "brick")) {
      Book book =
          Draft.of(tiles())
              .pieces(piece("tile", "slab"), piece("brick", "slab"))
              .orders(due("tile", heavier), due("brick", heavier))
              .book();
      Plan plan = Planned.of(book);
      assertEquals(heavier, plan.lots().get(0).runs().get(0).piece());
      assertEquals(1, plan.totals().lateOrders());
    }
  }

  private static Order due(String piece, String heavier) {
    BigDecimal weight = new BigDecimal(piece.equals(heavier) ? "1.25" : "1.2");
    Order order = SampleBook.order(piece, piece, 1, MONDAY + "14:00");
    return Altered.of(order, "weight", weight);
  }

  @Test
  void ordersComeInTheOrderOfTheBook() {
    Plan plan =
        Planned.of(tiles(order("Z", 1, DUE), order("A", 1, DUE), order("M", 1, MONDAY + "15:00")));
    assertEquals(List.of("Z", "A", "M"), plan.orders().stream().map(OrderOutcome::order).toList());
  }

  @Test
  void theListenerHearsOfBetterAndBetterPlansAndLastOfTheOneItGets() {
    List<Progress> heard = new ArrayList<>();
    PlanRequest request = new PlanRequest(FROM, Effort.ofSchedules(400), 0);
    Plan plan = Planning.of(busy(), request, heard::add).run();
    assertFalse(heard.isEmpty());
    for (int i = 1; i < heard.size(); i++) {
      Progress before = heard.get(i - 1);
      Progress now = heard.get(i);
      assertTrue(now.schedules() > before.schedules());
      assertTrue(now.elapsed().compareTo(before.elapsed()) >= 0);
      assertTrue(now.weightedLateHours().compareTo(before.weightedLateHours()) <= 0);
    }
    Progress last = heard.get(heard.size() - 1);
    assertTrue(last.schedules() <= 400);
    assertEquals(0, plan.totals().weightedLateHours().compareTo(last.weightedLateHours()));
    assertEquals(plan.totals().attendedMinutes(), last.attendedMinutes());
  }

  @Test
  void whatCannotBeMadeIsRefusedBeforePlanning() {
    Book book = Studios.studio(tiles(order("A", 1, DUE)), "batchLimitGrams", 10.0);
    PlanRequest request = new PlanRequest(FROM, Effort.ofSchedules(1), 0);
    assertEquals(
        List.of("$.pieces[0].mould"),
        Faults.paths(() -> Planning.of(book, request, progress -> {})));
  }

  @Test
  void moreCastingsThanAnyStudioPoursAreRefusedAtOnce() {
    Book book = tiles(order("A", 10_001, DUE));
    Fault fault = Faults.only(() -> Planned.of(book));
    assertEquals("$.orders", fault.path());
    assertEquals("10001 castings to plan", fault.found());
    assertEquals(List.of(), Planning.faults(tiles(order("A", 10_000, DUE)), FROM));
    Book huge = piece(tiles(order("A", 100_000, DUE)), "goodPercent", 0.000001);
    assertEquals(List.of("$.orders"), Faults.paths(() -> Planned.of(huge)));
  }

  @Test
  void hoursThatAreUsedUpAreSaidToBe() {
    SpecialDay once =
        new SpecialDay(LocalDate.parse("2027-04-06"), List.of(SampleBook.hours(9, 14)));
    Person ana = new Person("ana", "Ana", Map.of(), List.of(once));
    Planned.of(BookWith.people(tiles(order("A", 1, DUE)), ana));
    Fault fault = Faults.only(() -> Planned.of(BookWith.people(tiles(order("A", 2, DUE)), ana)));
    assertEquals("$.people", fault.path());
    assertEquals("hours that are used up before everything is made", fault.found());
  }
}
