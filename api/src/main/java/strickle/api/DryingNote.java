package strickle.api;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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

  /** What is to be fitted. */
  DryingWanted wanted() {
    List<DryingWanted.Weight> weights =
        weighings.stream()
            .map(
                one ->
                    new DryingWanted.Weight(
                        Optional.of(one.at()), OptionalDouble.empty(), one.grams()))
            .toList();
    return new DryingWanted(weights, scaleStepGrams, limitPercent);
  }
}
