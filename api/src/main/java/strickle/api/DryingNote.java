package strickle.api;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Label;

/**
 * The weights of a piece while it dries, as they are noted.
 *
 * @param id of this log, 1 to 64 characters
 * @param name what was weighed, 1 to 200 characters
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
   * @param grams above 0, at most 10000000
   */
  public record Weight(LocalDateTime at, double grams) {

    /** Refuses what is no weight. */
    public Weight {
      new Ranges()
          .above(
              ".grams", OptionalDouble.of(grams), DryingWanted.Weight.MOST_GRAMS, "a mass in grams")
          .done();
    }
  }

  /** Refuses what cannot be called that, and takes its own copy of the list. */
  public DryingNote {
    Label.check(id, name);
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
