package strickle.plan.audit;

import static strickle.plan.SamplePlan.demould;
import static strickle.plan.SamplePlan.spell;
import static strickle.plan.SamplePlan.step;

import java.util.List;
import java.util.OptionalLong;
import strickle.book.Altered;
import strickle.plan.FormHold;
import strickle.plan.Run;
import strickle.plan.Weighed;

/** The sample plan for a studio with two of each tub: lots 1 and 2 are poured as one lot, L1. */
final class TwoAtOnce {

  private TwoAtOnce() {}

  /** As it should be: one run of two castings. */
  static PlanDraft asOneRun() {
    return together(run("L1-1", 2, 1, 2))
        .spells("L1-1/demould", spell("04-06T09:00", 16))
        .spells("L1-1/step-1", spell("04-06T09:39", 13))
        .spells("L1-1/step-2", spell("04-12T09:16", 13))
        .spells("L1-1/step-3", spell("04-12T13:29", 13))
        .settled();
  }

  /** As it should not be: two runs of one casting, each with tubs and tasks of its own. */
  static PlanDraft asTwoRuns() {
    return together(run("L1-1", 1, 1), run("L1-2", 1, 2))
        .plusTask(demould("L1", "L1-2", spell("04-06T09:08", 8)))
        .plusTask(step("L1", "L1-2", 1, spell("04-06T09:16", 8)))
        .plusTask(step("L1", "L1-2", 2, spell("04-15T09:00", 9)))
        .plusTask(step("L1", "L1-2", 3, spell("04-15T13:09", 9)))
        .settled();
  }

  /** Twice 2494.2826 g are 4988.6 g; of the tenths left over the white gets the one. */
  private static PlanDraft together(Run... runs) {
    List<Weighed> weighOut =
        List.of(
            new Weighed("white-blend", 3874.7),
            new Weighed("iron-black", 116.2),
            new Weighed("water", 997.7));
    PlanDraft draft = Reading.sample().withoutLot("L2");
    for (String task :
        List.of("L2/pour", "L2-1/demould", "L2-1/step-1", "L2-1/step-2", "L2-1/step-3")) {
      draft.withoutTask(task);
    }
    return draft
        .lot("L1", lot -> Altered.of(lot, "runs", List.of(runs)))
        .lot("L1", lot -> Altered.of(lot, "weighOut", weighOut))
        .lot("L1", lot -> Altered.of(lot, "wetGrams", 4988.6))
        .spells("L1/pour", spell("04-05T09:00", 42));
  }

  private static Run run(String id, int castings, Integer... units) {
    List<FormHold> forms =
        List.of(new FormHold("tub-a", List.of(units)), new FormHold("tub-b", List.of(units)));
    return new Run(id, "planter-slate", castings, forms, OptionalLong.of(7872));
  }
}
