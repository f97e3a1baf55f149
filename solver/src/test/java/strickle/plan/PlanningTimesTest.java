package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.piece;
import static strickle.plan.Studios.step;
import static strickle.plan.Studios.tiles;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.After;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.BookWith;
import strickle.book.Climate;
import strickle.book.Draft;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.SampleBook;
import strickle.book.Step;
import strickle.book.WaitKind;
import strickle.book.Window;

/** Zones, clock changes and the climate; every plan is read by the audit as well. */
class PlanningTimesTest {

  private static final String DUE = "2027-12-30T12:00";

  /** The tile studio in another zone, by night: 22:00 to 24:00 and 0:00 to 6:00. */
  private static Book nights(String zone) {
    List<Window> nights = List.of(new Window(0, 360), new Window(1320, 1440));
    Person ana = SampleBook.person("ana", nights, DayOfWeek.values());
    Book book = BookWith.people(tiles(order("A", 1, DUE)), ana);
    return Studios.studio(book, "timeZone", ZoneId.of(zone));
  }

  /** Poured from 22:00, set 4 elapsed hours after 22:27; clock changes as in StudioTimeTest. */
  @ParameterizedTest
  @CsvSource({
    "America/Chicago, 2027-03-13T22:00-06:00, 2027-03-14T03:27-05:00",
    "America/Chicago, 2027-11-06T22:00-05:00, 2027-11-07T01:27-06:00",
    "Australia/Lord_Howe, 2027-04-03T22:00+11:00, 2027-04-04T01:57+10:30",
    "Australia/Lord_Howe, 2027-10-02T22:00+10:30, 2027-10-03T02:57+11:00",
    "Asia/Kathmandu, 2027-03-13T22:00+05:45, 2027-03-14T02:27+05:45",
    "UTC, 2027-03-13T22:00Z, 2027-03-14T02:27Z"
  })
  void aSetTakesElapsedHoursAcrossAClockChange(String zone, String from, String out) {
    Plan plan = Planned.of(nights(zone), OffsetDateTime.parse(from));
    assertEquals(OffsetDateTime.parse(from), plan.tasks().get(0).start());
    assertEquals(OffsetDateTime.parse(out), plan.tasks().get(1).start());
  }

  @Test
  void everyTimeCarriesTheOffsetOfItsMoment() {
    Plan plan = Planned.of(nights("America/Chicago"), OffsetDateTime.parse("2027-03-14T04:00Z"));
    assertEquals("2027-03-13T22:00-06:00", plan.from().toString());
    assertEquals("2027-03-14T03:33-05:00", plan.ready().get(0).at().toString());
    assertEquals("2027-03-14T03:33-05:00", plan.totals().lastReady().toString());
    assertEquals("2027-03-14T03:33-05:00", plan.orders().get(0).ready().toString());
    assertEquals("2027-03-14T03:27-05:00", plan.waits().get(0).to().toString());
  }

  @Test
  void aTaskBreaksOffAtClosingAndGoesOnAtTheNextOpening() {
    Step sand = step(500, 0, OptionalDouble.empty());
    Plan plan = Planned.of(piece(tiles(order("A", 1, DUE)), "route", List.of(sand)));
    // 207 minutes on Monday, the 293 left on Tuesday.
    assertEquals("L1-1/step-1 ana 04-05T13:33 17:00 04-06T09:00 13:53", Planned.tasks(plan).get(2));
  }

  @Test
  void aTaskMayGoOnAtMidnightInTheNextWindow() {
    Book book = piece(nights("UTC"), "route", List.of(step(120, 18.5, OptionalDouble.empty())));
    Plan plan = Planned.of(book, OffsetDateTime.parse("2027-03-13T22:00Z"));
    assertEquals("L1-1/step-1 ana 03-14T22:00 00:00", Planned.tasks(plan).get(2));
    Book longer = piece(book, "route", List.of(step(150, 18.5, OptionalDouble.empty())));
    assertEquals(
        "L1-1/step-1 ana 03-14T22:00 00:00 03-15T00:00 00:30",
        Planned.tasks(Planned.of(longer, OffsetDateTime.parse("2027-03-13T22:00Z"))).get(2));
  }

  @Test
  void aPourIsNeverBrokenOff() {
    Plan plan = Planned.of(tiles(order("A", 1, DUE)), Studios.at(MONDAY + "16:26"));
    assertEquals("L1/pour ana 04-06T09:00 09:35", Planned.tasks(plan).get(0));
    Plan sooner = Planned.of(tiles(order("A", 1, DUE)), Studios.at(MONDAY + "16:25"));
    assertEquals("L1/pour ana 04-05T16:25 17:00", Planned.tasks(sooner).get(0));
  }

  @Test
  void nothingStartsBeforeTheBeginningThoughTheWindowIsOpen() {
    Plan plan = Planned.of(tiles(order("A", 1, DUE)), OffsetDateTime.parse("2027-04-05T16:11:30Z"));
    assertEquals(Studios.at(MONDAY + "11:11"), plan.from());
    assertEquals("L1/pour ana 04-05T11:11 11:46", Planned.tasks(plan).get(0));
  }

  /**
   * EN 1992-1-1 Annex B, B.10, read in the page on the file formats: 4 hours divided by exp(13.65 −
   * 4000/(273 + T)) are 389.52 minutes at 10 °C, 264.10 at 18 °C and 153.23 at 30 °C.
   */
  @ParameterizedTest
  @CsvSource({"10, 15:57", "18, 13:52", "30, 12:01"})
  void aColdRoomMakesTheSetLongerAndAWarmOneShorter(double temperatureC, String out) {
    Plan plan = Planned.of(inClimate(tiles(order("A", 1, DUE)), temperatureC));
    assertEquals(Studios.at(MONDAY + out), plan.tasks().get(1).start());
  }

  private static Book inClimate(Book book, double temperatureC) {
    LocalDateTime from = FROM.toLocalDateTime().minusDays(3);
    Climate climate = new Climate(from, temperatureC, OptionalDouble.empty());
    return Studios.studio(book, "climate", List.of(climate));
  }

  @Test
  void theClimateSlowsACureButNoDryRestOrMostWait() {
    Plan cure = Planned.of(inClimate(after(WaitKind.CURE), 10));
    Plan dry = Planned.of(inClimate(after(WaitKind.DRY), 10));
    Plan rest = Planned.of(inClimate(after(WaitKind.REST), 10));
    // Out of the mould at 16:03; an hour at 20 °C takes 97.38 minutes.
    assertEquals(Studios.at("2027-04-06T09:00"), cure.tasks().get(2).start());
    assertEquals(Studios.at(MONDAY + "17:41"), cure.waits().get(1).to());
    assertEquals(PlanWait.CURE, cure.waits().get(1).kind());
    assertEquals(Studios.at(MONDAY + "16:33"), dry.waits().get(1).from().plusMinutes(30));
    assertEquals(Studios.at(MONDAY + "17:03"), dry.waits().get(1).to());
    assertEquals(Studios.at(MONDAY + "17:03"), rest.waits().get(1).to());
    assertEquals(List.of(PlanWait.DRY, PlanWait.REST), List.of(kind(dry), kind(rest)));
  }

  private static PlanWait kind(Plan plan) {
    return plan.waits().get(1).kind();
  }

  private static Book after(WaitKind kind) {
    After after = new After(kind, 1, OptionalDouble.empty());
    Step step = Altered.of(step(5, 0, OptionalDouble.empty()), "after", after);
    return piece(tiles(order("A", 1, DUE)), "route", List.of(step));
  }

  @Test
  void theClimateChangesInTheMiddleOfASet() {
    // 153 minutes from 9:27 to 12:00 count in full; the 87 left take 141.20 at 10 °C.
    Climate cold = new Climate(LocalDateTime.parse(MONDAY + "12:00"), 10, OptionalDouble.empty());
    Plan plan = Planned.of(Studios.studio(tiles(order("A", 1, DUE)), "climate", List.of(cold)));
    assertEquals(Studios.at(MONDAY + "14:22"), plan.tasks().get(1).start());
  }

  @Test
  void theFinalDryIsElapsedTimeAndNobodyHasToBeThere() {
    Book book = piece(tiles(order("A", 1, DUE)), "finalDryHours", 63.55);
    Plan plan = Planned.of(inClimate(book, 10));
    // 63.55 hours from 16:03 are over at 7:36.
    assertEquals(Studios.at("2027-04-08T07:36"), plan.ready().get(0).at());
  }

  @Test
  void waitsOfNoLengthAreNotListed() {
    Book book = Studios.mould(tiles(order("A", 1, DUE)), "setHours", 0.0);
    Plan plan = Planned.of(book);
    assertEquals(List.of(), plan.waits());
    // A second person could take the piece out while the first washes up; there is only one.
    assertEquals(Studios.at(MONDAY + "09:35"), plan.tasks().get(1).start());
  }

  @Test
  void aSecondPersonTakesPiecesOutWhileTheFirstWashesUp() {
    Book book =
        Draft.of(Studios.mould(tiles(order("A", 1, DUE)), "setHours", 0.0))
            .people(Studios.weekdays("ana"), Studios.weekdays("ben"))
            .book();
    assertEquals(
        List.of("L1/pour ana 04-05T09:00 09:35", "L1-1/demould ben 04-05T09:27 09:33"),
        Planned.tasks(Planned.of(book)));
  }

  @Test
  void plansOfAWholeYearCrossBothClockChangesOfManyZones() {
    for (String zone :
        List.of("America/Chicago", "Europe/Vienna", "Australia/Lord_Howe", "America/Santiago")) {
      Book book = Studios.studio(slow(), "timeZone", ZoneId.of(zone));
      OffsetDateTime from = OffsetDateTime.parse("2027-01-04T12:34Z");
      Plan plan = Planned.of(book, from, 3, 0);
      assertTrue(plan.totals().lastReady().isAfter(from.plusDays(365)), zone);
    }
  }

  /** A casting takes half a day and a month to set; Sundays 0:00 to 5:00 are open. */
  private static Book slow() {
    List<Window> night = List.of(new Window(0, 300));
    Piece piece = Altered.of(piece("tile", "slab"), "finalDryHours", 0.1);
    Book book =
        Draft.of(tiles(order("A", 13, DUE)))
            .people(SampleBook.person("ana", night, DayOfWeek.SUNDAY, DayOfWeek.SATURDAY))
            .pieces(Altered.of(piece, "route", List.of(step(400, 1, OptionalDouble.empty()))))
            .book();
    return Studios.mould(book, "setHours", 600.0);
  }
}
