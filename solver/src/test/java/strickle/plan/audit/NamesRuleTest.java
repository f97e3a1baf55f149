package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.rulesBroken;
import static strickle.plan.audit.Reading.sample;

import org.junit.jupiter.api.Test;
import strickle.book.Altered;

class NamesRuleTest {

  @Test
  void noTwoTasksShareAName() {
    PlanDraft draft = sample().task("L2/pour", task -> Altered.of(task, "id", "L1/pour"));
    assertBreaks(0, "task L1/pour", BOOK, draft);
  }

  @Test
  void noTwoLotsShareAName() {
    PlanDraft draft = sample().lot("L2", lot -> Altered.of(lot, "id", "L1"));
    assertTrue(rulesBroken(BOOK, draft.plan()).contains(0));
  }

  @Test
  void noTwoRunsShareAName() {
    PlanDraft draft = sample().run("L2", run -> Altered.of(run, "id", "L1-1"));
    assertTrue(rulesBroken(BOOK, draft.plan()).contains(0));
  }

  @Test
  void aTaskNamesTheLotItsRunIsPouredFrom() {
    PlanDraft draft = sample().task("L1-1/demould", task -> Altered.of(task, "lot", "L2"));
    assertBreaks(0, "task L1-1/demould", BOOK, draft);
  }
}
