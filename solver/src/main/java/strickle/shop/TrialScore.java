package strickle.shop;

import ai.timefold.solver.core.api.score.BendableScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;

/** Tells Timefold how good a priority is: the value of the best order tried, which it is at. */
public final class TrialScore implements EasyScoreCalculator<Priority, BendableScore> {

  private static final long[] NO_HARD_LEVELS = {};

  /** For Timefold, which makes one for each search. */
  public TrialScore() {}

  @Override
  public BendableScore calculateScore(Priority priority) {
    Trials trials = priority.trials();
    if (!trials.found()) {
      long worst = -Long.MAX_VALUE / 2;
      return BendableScore.of(NO_HARD_LEVELS, new long[] {worst, -trials.leastMissing(), worst});
    }
    Value best = trials.best();
    return BendableScore.of(
        NO_HARD_LEVELS, new long[] {-best.late(), -best.attended(), -best.flow()});
  }
}
