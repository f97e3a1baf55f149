package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.LateBooks.FRIDAY_AFTERNOON;
import static strickle.plan.LateBooks.oneRackPlace;
import static strickle.plan.LateBooks.oneTray;
import static strickle.plan.LateBooks.outcome;
import static strickle.plan.LateBooks.overTheWeekend;
import static strickle.plan.LateBooks.plan;
import static strickle.plan.LateBooks.sampleDue;
import static strickle.plan.LateBooks.shortMostWait;
import static strickle.plan.LateBooks.tile;
import static strickle.plan.LateBooks.tiles;
import static strickle.plan.LateBooks.vaseAndTile;
import static strickle.plan.Studios.FRIDAY;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.BookWith;

/**
 * Each kind of reason, with names and times that can be worked out by head; see {@link Studios}.
 */
class WhyTest {

  private static List<String> because(Book book, String order) {
    return outcome(book, order).because();
  }

  private static void assertSays(String sentence, List<String> because) {
    assertTrue(because.contains(sentence), () -> String.join("\n", because));
  }

  private static void assertEndsWith(String sentence, List<String> because) {
    assertEquals(sentence, because.get(because.size() - 1), () -> String.join("\n", because));
  }

  @Test
  void anOrderOnTimeHasNoReasons() {
    Book book = tiles(Studios.order("O-1", 1, MONDAY + "14:00"));
    Plan plan = plan(book, FROM);
    assertEquals(List.of(), plan.orders().get(0).because());
    assertEquals(List.of(), Why.of(book, plan, "O-1"));
  }

  @Test
  void anOrderTheBookDoesNotKnowIsRefused() {
    Book book = tiles(Studios.order("O-1", 1, MONDAY + "14:00"));
    Plan plan = plan(book, FROM);
    assertThrows(IllegalArgumentException.class, () -> Why.of(book, plan, "O-2"));
  }

  @Test
  void aPlanOfAnotherBookIsRefused() {
    Plan plan = SamplePlan.example();
    Book book = tiles(Studios.order("O-1", 1, MONDAY + "14:00"));
    assertThrows(IllegalArgumentException.class, () -> Why.of(book, plan, "O-1"));
  }

  @Test
  void aFormIsNamedWithWhoHoldsItAndUntilWhen() {
    assertEquals(
        List.of(
            "tile (L2-1) is ready Tue 6 Apr 09:06, 18 h 6 min after O-2 is due",
            "the earlier pieces go to O-1, due before",
            "the pour waits for the tray until Mon 5 Apr 13:33, which L1-1 (tile, for O-1) holds",
            "its waits take 4 h: 4 h to set",
            "the demoulding waits: nobody who may do it is open"
                + " from Mon 5 Apr 18:00 until Tue 6 Apr 09:00",
            "a second tray would free it: it could be ready Mon 5 Apr 14:08"),
        because(oneTray(), "O-2"));
  }

  @Test
  void whatTheRunInTheWayHadWaitedForIsToldOneStepBack() {
    Book book =
        tiles(
            Studios.order("O-1", 1, MONDAY + "14:00"),
            Studios.order("O-2", 1, TUESDAY + "12:00"),
            Studios.order("O-3", 1, TUESDAY + "12:30"));
    assertSays(
        "with L2-1 itself the demoulding waits: nobody who may do it is open"
            + " from Mon 5 Apr 18:00 until Tue 6 Apr 09:00",
        because(book, "O-3"));
  }

  @Test
  void aPersonIsNamedWithTheTaskAndUntilWhen() {
    List<String> because = because(vaseAndTile(), "O-2");
    assertSays(
        "the pour waits: Ana is busy until Mon 5 Apr 11:55"
            + " with the pour of L1 (vase, for O-1)",
        because);
    assertEndsWith(
        "hours for Ana between Mon 5 Apr 06:00 and 06:45,"
            + " or another pair of hands for the pour between Mon 5 Apr 09:00 and 09:45,"
            + " would free it",
        because);
  }

  @Test
  void closedHoursAreToldFromWhenUntilWhen() {
    List<String> because = outcome(overTheWeekend(), FRIDAY_AFTERNOON, "O-1").because();
    assertSays(
        "the demoulding waits: nobody who may do it is open"
            + " from Fri 9 Apr 18:27 until Mon 12 Apr 09:00",
        because);
    assertEndsWith(
        "hours for Ana between Fri 9 Apr 18:30 and 18:45 would free it:"
            + " it could be ready Fri 9 Apr 18:36",
        because);
  }

  @Test
  void aFullStationIsNamedWithWhatLiesThere() {
    List<String> because = because(oneRackPlace(), "O-2");
    assertTrue(
        because.stream()
            .anyMatch(
                line ->
                    line.startsWith("“sand” waits: the drying rack is full until Tue 6 Apr 1")
                        && line.endsWith(", L1-1 (tile, for O-1) lies there")),
        () -> String.join("\n", because));
    assertTrue(because.get(because.size() - 1).startsWith("1 more place at the drying rack"));
  }

  @Test
  void aMostWaitIsToldWithWhatStandsInTheWayOfTheLaterTask() {
    OffsetDateTime friday = Studios.at(FRIDAY + "00:00");
    List<String> because = outcome(shortMostWait(), friday, "O-1").because();
    assertSays(
        "poured later, Mon 12 Apr 12:33, so that it can be taken out within 20 h:"
            + " otherwise nobody who may do it is open from Fri 9 Apr 19:27 until Mon 12 Apr 09:00",
        because);
    assertEndsWith(
        "hours for Ana between Fri 9 Apr 19:30 and 19:45,"
            + " or hours for Ana between Fri 9 Apr 06:00 and 06:45, would free it",
        because);
  }

  @Test
  void aTaskBrokenOffAtClosingIsToldWithBothTimes() {
    Book book =
        Studios.mould(tiles(Studios.order("O-1", 1, TUESDAY + "08:00")), "demouldMinutes", 300);
    assertSays(
        "Ana breaks off the demoulding at closing, Mon 5 Apr 17:00, and goes on Tue 6 Apr 09:00",
        because(book, "O-1"));
  }

  @Test
  void aPinIsTold() {
    Book book =
        BookWith.pins(
            tiles(Studios.order("O-1", 1, MONDAY + "17:00")), Studios.pin(1, TUESDAY + "09:00"));
    List<String> because = because(book, "O-1");
    assertSays("the pour is settled for Tue 6 Apr 09:00", because);
    assertEndsWith(
        "a pour that is not pinned would free it: it could be ready Mon 5 Apr 13:33", because);
    assertEquals(0, outcome(BookWith.pins(book), "O-1").lateMinutes());
  }

  @Test
  void aRouteLongerThanTheTimeIsToldWithThePlansBeginning() {
    Book book = tiles(Studios.order("O-1", 1, MONDAY + "03:00"));
    assertEquals(
        List.of(
            "tile (L1-1) is ready Mon 5 Apr 13:33, 10 h 33 min after O-1 is due",
            "nothing starts before Mon 5 Apr 00:00, when the plan begins;"
                + " that leaves 3 h until it is due",
            "the pour waits: nobody who may do it is open"
                + " from Mon 5 Apr 00:00 until Mon 5 Apr 09:00",
            "its waits take 4 h: 4 h to set",
            "even begun at once and with nothing in its way it takes until Mon 5 Apr 13:33;"
                + " only a later date or an earlier start would have it in time",
            "hours for Ana between Mon 5 Apr 06:00 and 06:45 would bring it forward to"
                + " Mon 5 Apr 10:33, still 7 h 33 min late"),
        because(book, "O-1"));
  }

  @Test
  void whenNothingCouldBeSoonerADateOrAStartIsAllThatHelps() {
    OffsetDateTime nine = Studios.at(MONDAY + "09:00");
    Book book = tiles(Studios.order("O-1", 1, MONDAY + "12:00"));
    assertEndsWith(
        "even begun at once and with nothing in its way it takes until Mon 5 Apr 13:33;"
            + " a later date or an earlier start is all that could have it in time",
        outcome(book, nine, "O-1").because());
  }

  @Test
  void anOrderDueBeforeThePlanBeginsSaysSo() {
    Book book = tiles(Studios.order("O-1", 1, "2027-04-04T12:00"));
    assertSays(
        "O-1 was due Sun 4 Apr 12:00, before the plan begins Mon 5 Apr 00:00",
        because(book, "O-1"));
  }

  @Test
  void stockIsHandedOverNoSoonerThanThePlanBegins() {
    Book book = tile(tiles(Studios.order("O-1", 1, "2027-04-04T12:00")), "onHand", 1);
    assertEquals(
        List.of(
            "O-1 is served from stock Mon 5 Apr 00:00, when the plan begins,"
                + " 12 h after it is due",
            "nothing is earlier than the plan's beginning; a later date is all that helps"),
        because(book, "O-1"));
  }

  @Test
  void aTimeInAnotherYearThanThePlansFirstHasItsYear() {
    Book book = tile(tiles(Studios.order("O-1", 1, "2028-01-03T12:00")), "finalDryHours", 6600.0);
    assertEquals(
        "tile (L1-1) is ready Wed 5 Jan 2028 12:33, 48 h 33 min after O-1 is due",
        because(book, "O-1").get(0));
  }

  /** The sample plan, as if read from a file, for a book with an earlier date. */
  @Test
  void aPlanMadeElsewhereIsExplainedFromItsRecordsAlone() {
    assertEquals(
        List.of(
            "deep planter, slate (L4-1) is ready Tue 20 Apr 13:18,"
                + " 4 h 4 min after O-104 is due",
            "the pour waits for the deep tub and the mid tub until Sat 10 Apr 10:08,"
                + " which L3-1 (deep planter, slate, for the same order) holds",
            "L3-1 itself waited for the deep tub and the mid tub until Fri 9 Apr 09:08,"
                + " which L2-1 (deep planter, slate, for the same order) held",
            "with L2-1 itself the demoulding waits: nobody who may do it is open"
                + " from Wed 7 Apr 07:32 until Fri 9 Apr 09:00",
            "its waits take 7 days 14 h: 20 h to set at 20 °C (22 h 1 min in this room),"
                + " 120 h to cure at 20 °C (132 h 4 min in this room), 4 h to dry"
                + " and 24 h to dry at the end",
            "“first seal coat” waits: nobody who may do it is open"
                + " from Sat 17 Apr 21:20 until Mon 19 Apr 09:00",
            "a second deep tub and a second mid tub,"
                + " or hours for Ana between Sat 17 Apr 21:30 and 21:45, would free it"),
        Why.of(sampleDue("2027-04-20T09:14"), SamplePlan.example(), "O-104"));
  }
}
