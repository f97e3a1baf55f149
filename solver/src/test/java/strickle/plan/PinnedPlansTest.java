package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.form;
import static strickle.plan.Studios.mould;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.pin;
import static strickle.plan.Studios.step;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Studios.weekdays;

import java.time.DayOfWeek;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Draft;
import strickle.book.Fault;
import strickle.book.Faults;
import strickle.book.Person;
import strickle.book.Pin;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.Window;

/** What becomes of pins in a plan; the audit reads each for its pins being kept. */
class PinnedPlansTest {

  private static final String DUE = "2027-04-05T12:00";

  /** Two people, one tray, so many tiles ordered for as soon as can be. */
  private static Book book(int tiles, Pin... pins) {
    return Draft.of(tiles(order("A", tiles, DUE)))
        .people(weekdays("ana"), weekdays("ben"))
        .pins(pins)
        .book();
  }

  /** The same with five trays, one lid and so many boxes, which need a lid, on order as well. */
  private static Book boxes(int tiles, int boxes, Pin... pins) {
    return Draft.of(book(tiles))
        .forms(form("tray", 5), form("lid", 1))
        .moulds(mould("slab", "tray"), mould("box", "tray", "lid"))
        .pieces(piece("tile", "slab"), piece("box", "box"))
        .orders(order("A", tiles, DUE), SampleBook.order("B", "box", boxes, DUE))
        .pins(pins)
        .book();
  }

  private static Fault refused(Book book) {
    return Faults.only(() -> Planned.of(book));
  }

  @Test
  void aPourIsKeptWhereItIsPinnedThoughItCouldBeSooner() {
    Plan plan = Planned.of(book(1, pin("tile", 1, TUESDAY + "10:15", "ben")));
    assertEquals("L1/pour ben 04-06T10:15 10:50", Planned.tasks(plan).get(0));
  }

  @Test
  void whatIsNotPinnedIsPlannedAroundIt() {
    Plan plan =
        Planned.of(Draft.of(boxes(3, 1, pin(2, MONDAY + "09:30"))).people(weekdays("ana")).book());
    assertEquals("L1/pour ana 04-05T09:30 10:20", Planned.tasks(plan).get(0));
    // Half an hour before the pin is too little for a pour of 35 minutes.
    assertTrue(
        plan.tasks().stream().skip(1).noneMatch(task -> task.start().getHour() < 10),
        () -> Planned.tasks(plan).toString());
  }

  @Test
  void nothingIsAddedToAPinnedLot() {
    Plan plan = Planned.of(boxes(5, 1, pin(1, MONDAY + "09:00")));
    assertEquals(Map.of("tile", 1), contents(plan, MONDAY + "09:00", "ana"));
  }

  @Test
  void twoPiecesPinnedAtOneMomentAreOneLot() {
    Plan plan =
        Planned.of(
            boxes(
                4,
                2,
                pin("box", 1, MONDAY + "14:00", "ana"),
                pin("tile", 2, MONDAY + "14:00", "ana")));
    assertEquals(Map.of("box", 1, "tile", 2), contents(plan, MONDAY + "14:00", "ana"));
  }

  @Test
  void twoPeopleArePinnedAtOneTime() {
    Plan plan =
        Planned.of(
            boxes(
                4,
                1,
                pin("tile", 3, MONDAY + "10:00", "ben"),
                pin("box", 1, MONDAY + "10:00", "ana")));
    assertEquals(Map.of("tile", 3), contents(plan, MONDAY + "10:00", "ben"));
    assertEquals(Map.of("box", 1), contents(plan, MONDAY + "10:00", "ana"));
  }

  /** What is in the lot poured by somebody at a moment. */
  private static Map<String, Integer> contents(Plan plan, String start, String person) {
    Map<String, Integer> castings = new TreeMap<>();
    for (Task task : plan.tasks()) {
      boolean poured = task.kind() == TaskKind.POUR && task.person().equals(person);
      if (poured && task.start().equals(Studios.at(start))) {
        plan.lots().stream()
            .filter(lot -> lot.id().equals(task.lot()))
            .flatMap(lot -> lot.runs().stream())
            .forEach(run -> castings.put(run.piece(), run.castings()));
      }
    }
    return castings;
  }

  @Test
  void aPinnedPersonTakesThePiecesOutAfterThePinnedPour() {
    Book book =
        Draft.of(boxes(2, 1, pin(1, MONDAY + "09:00"), pin(1, MONDAY + "13:20")))
            .people(weekdays("ana"))
            .book();
    List<String> tasks = Planned.tasks(Planned.of(book));
    assertTrue(tasks.contains("L1-1/demould ana 04-05T13:55 14:01"), tasks::toString);
  }

  @Test
  void aPinThatLeavesNoTimeToTakeThePiecesOutIsRefused() {
    // Poured by 13:00, a tile is set at 17:00 or later; within five hours nobody is there again.
    Book book = Studios.mould(book(1), "setAtMostHours", OptionalDouble.of(5));
    assertEquals(
        new Fault(
            "$.pins[0].start",
            "2027-04-05T12:33",
            "a start that leaves time to take the pieces out of the mould before the most-wait is"
                + " over, and its forms free until then"),
        refused(BookWith.pins(book, pin(1, MONDAY + "12:33"))));
    Planned.of(BookWith.pins(book, pin(1, MONDAY + "12:32")));
  }

  @Test
  void aPinThatNeedsAFormAnotherPinStillHoldsIsRefused() {
    // The first box is taken out from 13:27 to 13:33.
    Pin first = pin("box", 1, MONDAY + "09:00", "ana");
    Book book = boxes(1, 2, pin("box", 1, MONDAY + "13:32", "ben"), first);
    Fault fault = refused(book);
    assertEquals("$.pins[0].start", fault.path());
    assertEquals("2027-04-05T13:32", fault.found());
    Planned.of(boxes(1, 2, pin("box", 1, MONDAY + "13:33", "ben"), first));
  }

  @Test
  void twoPinsAtOneTimeThatNeedTheSameFormAreRefused() {
    Book book =
        boxes(1, 2, pin("box", 1, MONDAY + "09:00", "ana"), pin("box", 1, MONDAY + "09:00", "ben"));
    assertEquals("$.pins[1].start", refused(book).path());
  }

  @Test
  void mouldsThatShareAFormCannotBePinnedIntoEachOthersTime() {
    Book book =
        Draft.of(boxes(1, 1, pin("tile", 1, MONDAY + "09:00", "ana")))
            .forms(form("tray", 1), form("lid", 1))
            .book();
    Planned.of(book);
    Pin[] both = {pin("tile", 1, MONDAY + "09:00", "ana"), pin("box", 1, MONDAY + "11:00", "ben")};
    assertEquals("$.pins[1].start", refused(BookWith.pins(book, both)).path());
  }

  @Test
  void aPinYearsAheadIsKept() {
    Plan plan = Planned.of(book(2, pin(1, "2032-04-05T09:00")));
    assertTrue(
        plan.tasks().stream().anyMatch(task -> task.start().getYear() == 2032), plan::toString);
  }

  @Test
  void everythingMayBePinned() {
    Plan plan =
        Planned.of(book(2, pin(1, TUESDAY + "09:00"), pin("tile", 1, MONDAY + "09:00", "ben")));
    assertEquals(2, plan.totals().lots());
    assertEquals(Studios.at(TUESDAY + "13:33"), plan.totals().lastReady());
  }

  /**
   * Placed first, the tile would be sanded from 13:33 to 14:03, and the box, taken out after that,
   * would hold the lid one minute too long for Ben's pour. The sanding can wait; the box cannot.
   */
  @Test
  void whatAnEarlyPinCanDoLaterIsNotInTheWayOfALaterPin() {
    Step sand = step(30, 0, OptionalDouble.of(1));
    Book book =
        Draft.of(
                boxes(
                    1,
                    2,
                    pin("tile", 1, MONDAY + "09:00", "ana"),
                    pin("box", 1, MONDAY + "09:35", "ana"),
                    pin("box", 1, MONDAY + "14:08", "ben")))
            .people(weekdays("ana"), afternoons("ben"))
            .pieces(Altered.of(piece("tile", "slab"), "route", List.of(sand)), piece("box", "box"))
            .book();
    assertEquals(
        List.of("L2-1/demould ana 04-05T14:02 14:08", "L1-1/step-1 ana 04-05T14:08 14:38"),
        Planned.tasks(Planned.of(book)).stream()
            .filter(task -> task.matches("(L1-1/step|L2-1/dem).*"))
            .sorted(Comparator.reverseOrder())
            .toList());
  }

  private static Person afternoons(String id) {
    return SampleBook.person(id, List.of(new Window(14 * 60 + 8, 17 * 60)), DayOfWeek.values());
  }

  @Test
  void everyPinWithoutRoomIsTold() {
    Book book =
        Studios.mould(
            boxes(
                4,
                1,
                pin("tile", 1, MONDAY + "13:00", "ben"),
                pin("tile", 1, MONDAY + "09:00", "ana"),
                pin("tile", 1, TUESDAY + "13:00", "ana")),
            "setAtMostHours",
            OptionalDouble.of(5));
    assertEquals(
        List.of("$.pins[0].start", "$.pins[2].start"),
        Planning.faults(book, Studios.FROM).stream().map(Fault::path).toList());
  }
}
