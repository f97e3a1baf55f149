package strickle.plan.audit;

import static strickle.plan.SamplePlan.spell;
import static strickle.plan.SamplePlan.step;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.After;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.WaitKind;
import strickle.plan.PlanWait;
import strickle.plan.Wait;

/** Rule 3. */
class StepsRuleTest {

  @Test
  void aStepTakesItsMinutes() {
    PlanDraft draft = sample().spells("L4-1/step-3", spell("04-19T13:09", 10));
    assertBreaks(3, "task L4-1/step-3", BOOK, draft.settled());
  }

  @Test
  void aStepTakesItsMinutesForEachPiece() {
    // Two castings: 5 minutes to set up and 2 x 4.
    PlanDraft draft = TwoAtOnce.asOneRun().spells("L1-1/step-3", spell("04-12T13:29", 18));
    assertBreaks(3, "task L1-1/step-3", Books.withTwoTubs(), draft.settled());
  }

  @Test
  void aStepDoesNotStartBeforeItsElapsedHoursAreOver() {
    // The first coat is done at 9:25 and dries for 4 hours.
    PlanDraft draft = sample().spells("L1-1/step-3", spell("04-12T13:24", 9));
    assertBreaks(3, "task L1-1/step-3", BOOK, draft.settled());
  }

  @Test
  void aFractionOfAMinuteOfWaitIsAWholeOne() {
    // 3.99 h are 239.4 minutes: over at 13:25 all the same, and 3.98 h are 238.8: over at 13:24.
    PlanDraft early = sample().spells("L1-1/step-3", spell("04-12T13:24", 9));
    Follow dries240 = Follow.SAMPLE;
    Follow dries239 = dries240.withDry(239);
    assertBreaks(3, "task L1-1/step-3", Books.driesFor(3.99), early.settled(dries240));
    assertValid(Books.driesFor(3.98), early.settled(dries239));
  }

  @Test
  void aCureIsCountedAtTheTemperatureOfTheRoom() {
    // Lot 3 has from Saturday 10:47 to Friday 9:00, 8533 minutes. At 18 °C 129.24 h take
    // 129.24 / 0.908733 h = 8533.20 minutes, over at 8534, and 129.23 h take 8532.54.
    PlanDraft longer = sample().settled(Follow.SAMPLE.withCure(8534));
    assertBreaks(3, "task L3-1/step-2", Books.curesFor(129.24), longer);
    PlanDraft shorter = sample().settled(Follow.SAMPLE.withCure(8533));
    assertValid(Books.curesFor(129.23), shorter);
  }

  @Test
  void aRestIsNotCountedAtTheTemperatureOfTheRoom() {
    After rest = new After(WaitKind.REST, 142, OptionalDouble.empty());
    PlanDraft draft = sample().settled(Follow.SAMPLE.withCure(142 * 60));
    draft.with("waits", draft.plan().waits().stream().map(StepsRuleTest::cureAsRest).toList());
    assertValid(Books.step(2, "after", rest), draft);
  }

  @Test
  void aStepMayStartAfterTheMostItMayWaitAndNoLater() {
    // 96 hours after Monday 9:25 it is Friday 9:25.
    assertValid(BOOK, sample().spells("L1-1/step-3", spell("04-16T09:25", 9)).settled());
    PlanDraft draft = sample().spells("L1-1/step-3", spell("04-16T09:26", 9));
    assertBreaks(3, "task L1-1/step-3", BOOK, draft.settled());
  }

  @Test
  void aStepIsNotTakenBeforeTheOneBeforeIt() {
    PlanDraft draft =
        sample()
            .spells("L4-1/demould", spell("04-12T09:08", 8))
            .spells("L4-1/step-1", spell("04-12T09:00", 8));
    assertBreaks(3, "task L4-1/step-1", BOOK, draft.settled());
  }

  @Test
  void onlyThoseNamedMayDoAStep() {
    Book book = Books.withBen();
    assertBreaks(3, "task L1-1/step-2", book, sample().person("L1-1/step-2", "ben"));
  }

  @Test
  void aStepThatNamesNobodyIsForAnybody() {
    assertValid(Books.withBen(), sample().person("L1-1/step-3", "ben").person("L1/pour", "ben"));
  }

  @Test
  void everyStepOfTheRouteIsTaken() {
    assertBreaks(3, "run L1-1", BOOK, sample().withoutTask("L1-1/step-2").settled());
  }

  @Test
  void noStepIsTakenTwice() {
    PlanDraft draft =
        sample()
            .plusTask(Altered.of(step("L1", "L1-1", 1, spell("04-06T10:00", 8)), "id", "again"));
    assertBreaks(3, "run L1-1", BOOK, draft.settled());
  }

  @Test
  void noStepIsTakenThatTheRouteDoesNotHave() {
    PlanDraft draft = sample().plusTask(step("L1", "L1-1", 4, spell("04-13T10:00", 9)));
    assertBreaks(3, "task L1-1/step-4", BOOK, draft.settled());
  }

  @Test
  void onlyRunsOfThePlanAreWorkedOn() {
    PlanDraft draft = sample().plusTask(step("L9", "L9-1", 1, spell("04-13T10:00", 8)));
    assertBreaks(3, "task L9-1/step-1", BOOK, draft.settled());
  }

  private static Wait cureAsRest(Wait wait) {
    boolean cure = wait.kind() == PlanWait.CURE;
    return cure ? Altered.of(wait, "kind", PlanWait.REST) : wait;
  }
}
