package strickle.api;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;
import strickle.cure.DryingLog;

/**
 * The weights of a piece while it dries, as they are noted.
 *
 * @param id of this log
 * @param name what was weighed
 * @param weighings in the order of time
 * @param scaleStepGrams what the scale can tell apart; 1 without it
 * @param limitPercent the loss in 24 hours that is waited for, in percent of the lesser weight; 0.2
 *     without it, a house rule
 */
public record DryingNote(
    String id,
    String name,
    List<Weight> weighings,
    OptionalDouble scaleStepGrams,
    OptionalDouble limitPercent) {

  private static final double MINUTES_PER_DAY = 24 * 60;
  private static final double USUAL_LIMIT = 0.2;

  /**
   * One weighing.
   *
   * @param at when, local to the studio
   * @param grams above 0
   */
  public record Weight(LocalDateTime at, double grams) {}

  /** Takes its own copy of the list. */
  public DryingNote {
    weighings = List.copyOf(weighings);
  }

  /**
   * The log, its days counted from the first weighing.
   *
   * @throws strickle.book.Faulty when it is none yet, or the weights contradict each other
   */
  DryingLog log() {
    List<strickle.cure.Weighing> days =
        weighings.stream()
            .map(
                one ->
                    new strickle.cure.Weighing(
                        Duration.between(weighings.get(0).at(), one.at()).toMinutes()
                            / MINUTES_PER_DAY,
                        one.grams()))
            .toList();
    return new DryingLog(days, scaleStepGrams.orElse(1));
  }

  /** The limit, in percent. */
  double limit() {
    return limitPercent.orElse(USUAL_LIMIT);
  }
}
