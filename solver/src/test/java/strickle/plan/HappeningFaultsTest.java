package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.MONDAY;
import static strickle.plan.Studios.TUESDAY;
import static strickle.plan.Studios.at;
import static strickle.plan.Studios.form;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.tiles;
import static strickle.plan.Told.away;
import static strickle.plan.Told.broken;
import static strickle.plan.Told.demoulded;
import static strickle.plan.Told.poured;
import static strickle.plan.Told.scrapped;
import static strickle.plan.Told.step;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.Draft;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.replan.Happening;
import strickle.plan.replan.ReplanRequest;

/** What cannot have happened is refused with its place. */
class HappeningFaultsTest {

  private static final Book BOOK = tiles(order("A", 2, "2027-04-30T12:00"));
  private static final Plan PLAN = Planned.of(BOOK);
  private static final Happening POURED = poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:35");

  private static List<Fault> faults(Plan plan, String now, Happening... happened) {
    ReplanRequest request =
        new ReplanRequest(at(now), at(now), List.of(happened), Effort.ofSchedules(5), 0);
    Faulty faulty = assertThrows(Faulty.class, () -> Replanning.of(BOOK, plan, request));
    return faulty.faults();
  }

  private static void assertRefused(String path, String words, Happening... happened) {
    List<Fault> faults = faults(PLAN, TUESDAY + "12:00", happened);
    assertEquals(List.of(path), faults.stream().map(Fault::path).toList());
    assertTrue(faults.get(0).toString().contains(words), faults.toString());
  }

  @Test
  void whatThePlanDoesNotHaveIsNamedWithTheNearest() {
    assertRefused(
        "$.happened[0].lot", "\"L2\"", poured("L22", "ana", MONDAY + "09:00", MONDAY + "09:35"));
    assertRefused("$.happened[0].person", "\"ana\"", poured("L1", "anna", MONDAY + "09:00", ""));
    assertRefused("$.happened[0].form", "\"tray\"", broken("trey", 1, MONDAY + "09:00"));
    assertRefused("$.happened[1].run", "\"L1-1\"", POURED, scrapped("L1-11", 1));
  }

  @Test
  void aStepTheRouteDoesNotHaveIsRefused() {
    assertRefused("$.happened[0].step", "no step", step("L1-1", 1, "ana", MONDAY + "14:00", ""));
  }

  @Test
  void nothingIsDoneInTheFuture() {
    List<Fault> faults = faults(PLAN, MONDAY + "09:10", POURED);
    assertEquals("$.happened[0].end", faults.get(0).path());
  }

  @Test
  void nothingIsToldTwice() {
    assertRefused("$.happened[1]", "a second time", POURED, POURED);
  }

  @Test
  void nothingComesBeforeWhatItFollows() {
    Happening out = demoulded("L1-1", "ana", MONDAY + "13:27", MONDAY + "13:33");
    assertRefused("$.happened[0]", "L1/pour is not done", out);
    Happening tooSoon = demoulded("L1-1", "ana", MONDAY + "09:20", MONDAY + "09:40");
    assertRefused("$.happened[1].start", "2027-04-05T09:27 or later", POURED, tooSoon);
  }

  @Test
  void nothingIsPouredIntoAFormThatIsStillFull() {
    Happening next = poured("L2", "ana", MONDAY + "13:33", MONDAY + "14:08");
    assertRefused("$.happened[1].start", "2 of form \"tray\"", POURED, next);
  }

  @Test
  void onlyWhatIsThereCanBeLost() {
    assertRefused("$.happened[1].pieces", "at most 1", POURED, scrapped("L1-1", 2));
    assertRefused("$.happened[0].run", "not poured", scrapped("L1-1", 1));
    assertRefused("$.happened[0].count", "at most 1", broken("tray", 2, MONDAY + "09:00"));
  }

  @Test
  void nobodyIsAwayForYears() {
    assertRefused(
        "$.happened[0].to", "not after", away("ana", MONDAY + "09:00", "2031-01-01T00:00"));
  }

  @Test
  void whatIsDoneCannotBeToldOtherwise() {
    ReplanRequest request =
        new ReplanRequest(
            at(MONDAY + "11:00"), at(MONDAY + "11:00"), List.of(POURED), Effort.ofSchedules(5), 0);
    Plan plan = Replanning.of(BOOK, PLAN, request).run().plan();
    Happening otherwise = poured("L1", "ana", MONDAY + "09:00", MONDAY + "09:50");
    assertEquals("$.happened[0]", faults(plan, TUESDAY + "12:00", otherwise).get(0).path());
    assertEquals("now", faults(plan, MONDAY + "10:00").get(0).path());
  }

  @Test
  void nobodyGoesOnLongBeforeThePlanBegins() {
    Fault fault = faults(PLAN, "1999-01-01T00:00").get(0);
    assertEquals("now", fault.path());
    assertEquals(
        "a time not before 2026-04-04T00:00, a year before the plan begins", fault.right());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2030-01-25T12:00", "2999-12-31T23:59", "9999-12-31T23:59"})
  void nobodyGoesOnYearsAfterThePlanAndItsOrdersAreOver(String now) {
    Fault fault = assertTimeout(Duration.ofSeconds(2), () -> faults(PLAN, now).get(0));
    assertEquals("now", fault.path());
    assertTrue(fault.found().startsWith(now), fault.found());
    assertEquals(
        "a time not after 2030-01-24T12:00, 1000 days after the end of the plan and the last due"
            + " date",
        fault.right());
  }

  @Test
  void aPlanThatLayForTwoYearsIsGoneOnWith() {
    ReplanRequest request =
        new ReplanRequest(
            at("2029-04-30T12:00"), at("2029-04-30T12:00"), List.of(), Effort.ofSchedules(5), 0);
    Plan plan = Replanning.of(BOOK, PLAN, request).run().plan();
    assertEquals(2029, plan.tasks().get(0).start().getYear());
  }

  @Test
  void everythingWrongIsToldAtOnce() {
    List<Fault> faults =
        faults(
            PLAN,
            TUESDAY + "12:00",
            poured("L9", "ana", MONDAY + "09:00", ""),
            away("nobody", MONDAY + "09:00", TUESDAY + "09:00"));
    assertEquals(
        List.of("$.happened[0].lot", "$.happened[1].person"),
        faults.stream().map(Fault::path).toList());
  }

  @Test
  void whatIsUnknownIsToldTogetherWithWhatIsInTheFuture() {
    List<Fault> faults = faults(PLAN, MONDAY + "09:10", poured("L9", "anna", MONDAY + "09:20", ""));
    assertEquals(
        List.of("$.happened[0].lot", "$.happened[0].person", "$.happened[0].start"),
        faults.stream().map(Fault::path).toList());
  }

  @Test
  void nobodyIsAtTwoPoursAtOnce() {
    Book two = Draft.of(BOOK).forms(form("tray", 2)).book();
    Happening second = poured("L2", "ana", MONDAY + "09:30", MONDAY + "10:05");
    ReplanRequest request =
        new ReplanRequest(
            at(TUESDAY + "12:00"),
            at(TUESDAY + "12:00"),
            List.of(POURED, second),
            Effort.ofSchedules(5),
            0);
    Faulty faulty = assertThrows(Faulty.class, () -> Replanning.of(two, PLAN, request));
    assertEquals(1, faulty.faults().size(), faulty.getMessage());
    Fault fault = faulty.faults().get(0);
    assertEquals("$.happened[1].person", fault.path());
    assertTrue(fault.found().contains("$.happened[0] has them at the pour of L1"), fault.found());
  }

  @Test
  void nobodyPoursWhileAway() {
    Happening away = away("ana", MONDAY + "09:20", MONDAY + "12:00");
    assertRefused("$.happened[0].person", "$.happened[1] has them away", POURED, away);
    Happening before = away("ana", MONDAY + "08:00", MONDAY + "09:00");
    Happening after = away("ana", MONDAY + "09:35", MONDAY + "12:00");
    ReplanRequest request =
        new ReplanRequest(
            at(MONDAY + "12:00"),
            at(MONDAY + "12:00"),
            List.of(POURED, before, after),
            Effort.ofSchedules(5),
            0);
    assertEquals("ana", Replanning.of(BOOK, PLAN, request).run().plan().tasks().get(0).person());
  }

  @Test
  void nothingBreaksInTheFutureAndNothingIsDoneYearsBefore() {
    assertRefused("$.happened[0].from", "over by now", broken("tray", 1, "2027-05-01T09:00"));
    assertRefused(
        "$.happened[0].start",
        "not before 2026-04-",
        poured("L1", "ana", "2020-01-01T09:00", "2020-01-01T09:35"));
  }
}
