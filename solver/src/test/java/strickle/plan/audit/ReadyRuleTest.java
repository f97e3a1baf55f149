package strickle.plan.audit;

import static strickle.plan.SamplePlan.at;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.plan.Ready;
import strickle.plan.TaskKind;

/** Rule 7. */
class ReadyRuleTest {

  @Test
  void aRunIsNotReadyBeforeItsFinalDryIsOver() {
    assertBreaks(7, "run L1-1", BOOK, sample().ready("L1-1", at("04-13T13:33")));
  }

  @Test
  void aRunIsReadyAsSoonAsItsFinalDryIsOver() {
    assertBreaks(7, "run L1-1", BOOK, sample().ready("L1-1", at("04-13T13:35")));
  }

  @Test
  void theFinalDryIsCountedInElapsedHoursWhateverTheTemperature() {
    // 23.99 h are 1439.4 minutes.
    assertValid(Books.piece("finalDryHours", 23.99), sample());
    Follow shorter = Follow.SAMPLE.withFinalDry(1439);
    assertValid(Books.piece("finalDryHours", 23.98), sample().settled(shorter));
  }

  @Test
  void aRunWithoutARouteIsReadyWhenItHasDriedAfterItsDemould() {
    PlanDraft draft = sample();
    draft.with(
        "tasks", draft.plan().tasks().stream().filter(t -> t.kind() != TaskKind.STEP).toList());
    assertValid(Books.piece("route", List.of()), draft.settled());
  }

  @Test
  void everyRunIsListed() {
    PlanDraft draft = sample();
    List<Ready> ready = draft.plan().ready();
    assertBreaks(7, "run L1-1", BOOK, draft.with("ready", ready.subList(1, ready.size())));
  }

  @Test
  void noRunIsListedTwice() {
    PlanDraft draft = sample();
    List<Ready> ready = draft.plan().ready();
    assertBreaks(7, "run L1-1", BOOK, draft.with("ready", PlanDraft.plus(ready, ready.get(0))));
  }

  @Test
  void onlyRunsOfThePlanAreListed() {
    PlanDraft draft = sample();
    Ready unknown = new Ready("L9-1", at("04-13T13:34"));
    List<Ready> ready = PlanDraft.plus(draft.plan().ready(), unknown);
    assertBreaks(7, "run L9-1", BOOK, draft.with("ready", ready));
  }

  @Test
  void aRunWithoutALastStepIsTakenAtItsWord() {
    PlanDraft draft = sample();
    List<Ready> stated = draft.plan().ready();
    draft.withoutTask("L4-1/step-3").settled().with("ready", stated);
    draft.order("ready", at("04-20T13:18")).total("lastReady", at("04-20T13:18"));
    assertBreaks(3, "run L4-1", BOOK, draft.with("waits", withoutLast(draft.plan().waits())));
  }

  private static <T> List<T> withoutLast(List<T> list) {
    return list.subList(0, list.size() - 1);
  }
}
