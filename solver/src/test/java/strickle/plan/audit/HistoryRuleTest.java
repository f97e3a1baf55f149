package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.SamplePlan.at;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.plan.History;
import strickle.plan.Plan;

/** What has happened is read as it was, and excuses nothing else. */
class HistoryRuleTest {

  /** Tuesday noon: lot 1 is poured and out, its first step done, lot 2 is poured. */
  private static PlanDraft tuesday() {
    return done(sample(), "L1/pour", "L1-1/demould", "L1-1/step-1", "L2/pour")
        .with("history", history("04-06T12:00"));
  }

  private static PlanDraft done(PlanDraft draft, String... tasks) {
    for (String id : tasks) {
      draft.task(id, task -> Altered.of(task, "done", true));
    }
    return draft;
  }

  private static Optional<History> history(String now, History.Exceeded... exceeded) {
    return Optional.of(new History(at(now), List.of(), List.of(), List.of(exceeded)));
  }

  @Test
  void aPlanInWhichAllWentAsPlannedIsValid() {
    assertValid(BOOK, tuesday());
  }

  @Test
  void whatIsDoneMayHaveTakenLongerThanPlanned() {
    assertValid(BOOK, tuesday().spells("L1-1/step-1", spell("04-06T09:39", 12)).settled());
    assertBreaks(3, sample().spells("L1-1/step-1", spell("04-06T09:39", 12)).settled());
  }

  @Test
  void whatIsDoneMayHaveBeenOutsideTheHours() {
    assertValid(BOOK, tuesday().spells("L1/pour", spell("04-05T06:00", 31)).settled());
    assertBreaks(4, sample().spells("L1/pour", spell("04-05T06:00", 31)).settled());
  }

  @Test
  void whatIsToComeKeepsItsMinutesAndHoursAllTheSame() {
    assertBreaks(3, tuesday().spells("L4-1/step-3", spell("04-19T13:09", 10)).settled());
    assertBreaks(4, tuesday().spells("L4-1/demould", spell("04-12T08:00", 8)).settled());
  }

  @Test
  void whatIsToComeKeepsItsWaitsFromTheRealTimes() {
    // Really poured at 11 instead of 9:08, so that the set is over two hours later.
    PlanDraft later = tuesday().spells("L1/pour", spell("04-05T14:00", 31));
    later.task("L1-1/demould", task -> Altered.of(task, "done", false));
    later.task("L1-1/step-1", task -> Altered.of(task, "done", false));
    later.with("history", history("04-06T08:00"));
    done(later, "L1/pour").task("L2/pour", task -> Altered.of(task, "done", false));
    assertEquals(
        List.of(2), Audit.of(BOOK, later.settled().plan()).stream().map(Finding::rule).toList());
  }

  @Test
  void nothingToComeStartsBeforeNow() {
    PlanDraft draft = tuesday().task("L2/pour", task -> Altered.of(task, "done", false));
    assertBreaks(8, "task L2/pour", BOOK, draft);
  }

  @Test
  void whatIsDoneIsOverByNow() {
    PlanDraft early = tuesday().with("history", history("04-06T09:36"));
    assertEquals(
        List.of("task L1-1/step-1", "task L2/pour"),
        Audit.of(BOOK, early.plan()).stream().map(Finding::where).toList());
  }

  @Test
  void whatHasBegunIsNotOverAndHasBegun() {
    PlanDraft begun = tuesday().task("L2/pour", task -> Altered.of(task, "done", false));
    begun.task("L2/pour", task -> Altered.of(task, "begun", true));
    assertBreaks(0, "task L2/pour", BOOK, begun);
    assertValid(BOOK, PlanDraft.of(at0920()));
  }

  private static Plan at0920() {
    PlanDraft draft = done(sample(), "L1/pour", "L1-1/demould");
    draft.task("L2/pour", task -> Altered.of(task, "begun", true));
    return draft.with("history", history("04-06T09:20")).plan();
  }

  @Test
  void aPlanThatKnowsOfNoNowKnowsOfNothingDone() {
    assertBreaks(0, "task L1/pour", BOOK, done(sample(), "L1/pour"));
  }

  @Test
  void twoAtOnceAreAFindingUnlessBothReallyWere() {
    PlanDraft both = tuesday().spells("L2/pour", spell("04-06T09:39", 31)).settled();
    assertValid(BOOK, both);
    assertBreaks(4, sample().spells("L2/pour", spell("04-06T09:39", 31)).settled());
  }

  @Test
  void nothingReallyBeganBeforeWhatItFollowsWasOver() {
    PlanDraft early = tuesday().spells("L1-1/step-1", spell("04-06T09:05", 8)).settled();
    assertBreaks(3, "task L1-1/step-1", BOOK, early);
  }

  @Test
  void aWaitThatGrewTooLongIsToldToTheMinute() {
    // Lot 2 sets from Tuesday 9:31 to Friday 9:00, 71 hours and 29 minutes.
    Book short71 = Books.mould("setAtMostHours", OptionalDouble.of(71.25));
    assertBreaks(0, "task L2-1/demould", short71, tuesday());
    History.Exceeded told = new History.Exceeded("L2-1/demould", 14);
    assertValid(short71, tuesday().with("history", history("04-06T12:00", told)));
    History.Exceeded other = new History.Exceeded("L2-1/demould", 15);
    PlanDraft wrong = tuesday().with("history", history("04-06T12:00", other));
    assertBreaks(0, "task L2-1/demould", short71, wrong);
    assertBreaks(2, "task L2-1/demould", short71, sample());
  }

  @Test
  void aWaitBetweenTasksToComeNeverGrowsTooLong() {
    PlanDraft late = tuesday().spells("L3-1/step-3", spell("04-22T09:00", 9)).settled();
    late.with("history", history("04-06T12:00", new History.Exceeded("L3-1/step-3", 2871)));
    assertEquals(
        List.of(0, 3),
        Audit.of(BOOK, late.plan()).stream().map(Finding::rule).distinct().sorted().toList());
  }

  @Test
  void whatIsNotExceededIsNotToldToBe() {
    PlanDraft draft =
        tuesday().with("history", history("04-06T12:00", new History.Exceeded("L2-1/demould", 5)));
    assertBreaks(0, "task L2-1/demould", BOOK, draft);
  }

  @Test
  void onlyWhatIsPouredCanHaveLosses() {
    PlanDraft draft = tuesday().run("L3", run -> Altered.of(run, "scrapped", 1));
    assertTrue(
        Audit.of(BOOK, draft.plan()).stream()
            .anyMatch(finding -> finding.text().contains("has losses, but is not poured")));
  }

  @Test
  void absencesAreHoursLess() {
    History away =
        new History(
            at("04-06T12:00"),
            List.of(new History.Away("ana", at("04-09T08:00"), at("04-09T09:05"))),
            List.of(),
            List.of());
    PlanDraft draft = tuesday().with("history", Optional.of(away));
    assertBreaks(4, "task L2-1/demould", BOOK, draft);
  }

  @Test
  void nothingIsPouredIntoWhatIsBroken() {
    History broken =
        new History(
            at("04-06T12:00"),
            List.of(),
            List.of(new History.Broken("tub-a", List.of(1), at("04-06T10:00"))),
            List.of());
    PlanDraft draft = tuesday().with("history", Optional.of(broken));
    assertEquals(
        List.of("run L3-1", "run L4-1"),
        Audit.of(BOOK, draft.plan()).stream().map(Finding::where).toList());
  }
}
