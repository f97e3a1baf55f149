package strickle.json;

import java.util.OptionalDouble;
import strickle.safety.Caution;
import strickle.safety.Lift;

/**
 * What one person should lift at most ({@code strickle-lift/1}).
 *
 * @param limitKg the recommended limit
 * @param reachFactor the multiplier for the reach
 * @param heightFactor the multiplier for where the lift begins
 * @param travelFactor the multiplier for how far up or down
 * @param twistFactor the multiplier for the twist
 * @param oftenFactor the multiplier for how often
 * @param gripFactor the multiplier for the grip
 * @param massKg what is lifted; missing when it was not given
 * @param index the mass over the limit; missing without a mass, or when nothing should be lifted so
 * @param source whose equation it is
 * @param follow what goes before it
 */
public record LiftAnswer(
    double limitKg,
    double reachFactor,
    double heightFactor,
    double travelFactor,
    double twistFactor,
    double oftenFactor,
    double gripFactor,
    OptionalDouble massKg,
    OptionalDouble index,
    String source,
    String follow) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-lift/1";

  /**
   * The answer for a lift.
   *
   * @param massKg what is lifted, if that is known
   */
  public static LiftAnswer of(Lift lift, OptionalDouble massKg) {
    boolean has = massKg.isPresent() && lift.limitKg() > 0;
    return new LiftAnswer(
        lift.limitKg(),
        lift.reachFactor(),
        lift.heightFactor(),
        lift.travelFactor(),
        lift.twistFactor(),
        lift.often(),
        lift.grip(),
        massKg,
        has ? OptionalDouble.of(lift.index(massKg.orElseThrow())) : OptionalDouble.empty(),
        Caution.LIFTING.source(),
        Caution.FOLLOW);
  }
}
