package strickle.api;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.cure.Drying;
import strickle.cure.DryingLog;
import strickle.cure.Weighing;
import strickle.json.DryingAnswer;

/**
 * The weights of a piece while it dries, to be fitted.
 *
 * @param weighings in the order of time, all with times or all with days
 * @param scaleStepGrams what the scale can tell apart, above 0, at most 1000; 1 without it
 * @param limitPercent the loss in 24 hours that is waited for, in percent of the lesser weight,
 *     0.001 to 10; 0.2 without it, a house rule
 */
public record DryingWanted(
    List<Weight> weighings, OptionalDouble scaleStepGrams, OptionalDouble limitPercent) {

  private static final double MINUTES_PER_DAY = 24 * 60;
  private static final double USUAL_LIMIT = 0.2;
  private static final double USUAL_STEP_GRAMS = 1;

  /**
   * One weighing.
   *
   * @param at when, local to the studio
   * @param days or days since the beginning, 0 to 3650
   * @param grams above 0
   */
  public record Weight(Optional<LocalDateTime> at, OptionalDouble days, double grams) {

    /** The most that anything weighs. */
    static final double MOST_GRAMS = 1e7;

    private static final double MOST_DAYS = 3650;

    /** Refuses what is no weighing. */
    public Weight {
      new Ranges()
          .must(
              at.isPresent() != days.isPresent(),
              ".at",
              at.isPresent() ? "a time beside days" : "nothing",
              "a local time such as 2027-04-05T09:00, or days")
          .within(".days", days, 0, MOST_DAYS, "days since the beginning")
          .above(".grams", OptionalDouble.of(grams), MOST_GRAMS, "a mass in grams")
          .done();
    }
  }

  /** Refuses times beside days. */
  public DryingWanted {
    weighings = List.copyOf(weighings);
    long timed = weighings.stream().filter(one -> one.at().isPresent()).count();
    new Ranges()
        .must(
            timed == 0 || timed == weighings.size(),
            ".weighings",
            timed + " of " + weighings.size() + " with a time",
            "all with times, or all with days")
        .done();
  }

  /**
   * The fit.
   *
   * @param zone of the studio: days are elapsed days, also across a clock change
   * @throws Faulty when nothing can be told from the weights, paths from here
   */
  DryingAnswer answer(ZoneId zone) {
    List<Weighing> days = new ArrayList<>();
    for (Weight one : weighings) {
      days.add(new Weighing(days(one, zone), one.grams()));
    }
    try {
      DryingLog log = new DryingLog(days, scaleStepGrams.orElse(USUAL_STEP_GRAMS));
      Drying drying = Drying.of(log, limitPercent.orElse(USUAL_LIMIT));
      return DryingAnswer.of(log, begin(), drying);
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(this::placed).toList());
    }
  }

  private Optional<LocalDateTime> begin() {
    return weighings.isEmpty() ? Optional.empty() : weighings.get(0).at();
  }

  private double days(Weight one, ZoneId zone) {
    return begin()
        .map(first -> Duration.between(first.atZone(zone), one.at().orElseThrow().atZone(zone)))
        .map(elapsed -> elapsed.toMinutes() / MINUTES_PER_DAY)
        .orElseGet(() -> one.days().orElse(0));
  }

  // Whoever gave times looks for them, not for days.
  private Fault placed(Fault fault) {
    boolean timed = begin().isPresent() && fault.path().endsWith("].days");
    String path = timed ? fault.path().replace("].days", "].at") : fault.path();
    return new Fault(path.isEmpty() ? ".weighings" : path, fault.found(), fault.right());
  }
}
