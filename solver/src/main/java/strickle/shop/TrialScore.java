package strickle.shop;

import ai.timefold.solver.core.api.score.BendableScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;

/** Scores a priority by decoding it: lateness before attended minutes before flow, all negative. */
public final class TrialScore implements EasyScoreCalculator<Priority, BendableScore> {

  private static final long[] NO_HARD_LEVELS = {};

  /** For Timefold, which makes one for each search. */
  public TrialScore() {}

  @Override
  public BendableScore calculateScore(Priority priority) {
    Trials trials = priority.trials();
    if (!trials.tryOrder(priority.getSequence().getClaims())) {
      long worst = -Long.MAX_VALUE / 2;
      return BendableScore.of(NO_HARD_LEVELS, new long[] {worst, -trials.missing(), worst});
    }
    return BendableScore.of(
        NO_HARD_LEVELS, new long[] {-trials.late(), -trials.attended(), -trials.flowSearched()});
  }
}
