package strickle.api;

import java.util.OptionalDouble;
import strickle.json.LiftAnswer;
import strickle.safety.Lift;

/**
 * A lift with both hands; what is missing is as from the floor to a table, now and then.
 *
 * @param massKg what is lifted, above 0, at most 10000 kg
 * @param reachMm from the ankles to the hands, level, 0 to 10000 mm; 400 without it
 * @param heightMm of the hands above the floor where the lift begins, 0 to 10000 mm; 0 without it
 * @param travelMm up or down, 0 to 10000 mm; 750 without it
 * @param twistDegrees to the side, 0 to 180; 0 without it
 * @param often the equation's multiplier for how often, 0 to 1; 1 without it
 * @param grip its multiplier for the grip, 0 to 1; 0.9 without it
 */
public record LiftWanted(
    OptionalDouble massKg,
    OptionalDouble reachMm,
    OptionalDouble heightMm,
    OptionalDouble travelMm,
    OptionalDouble twistDegrees,
    OptionalDouble often,
    OptionalDouble grip) {

  private static final double MM_PER_CM = 10;
  private static final double MOST = 10_000;

  /** Refuses what is out of range. */
  public LiftWanted {
    new Ranges()
        .above(".massKg", massKg, MOST, "a mass in kg")
        .within(".reachMm", reachMm, 0, MOST, "a length in mm")
        .within(".heightMm", heightMm, 0, MOST, "a length in mm")
        .within(".travelMm", travelMm, 0, MOST, "a length in mm")
        .within(".twistDegrees", twistDegrees, 0, 180, "degrees")
        .within(".often", often, 0, 1, "a number")
        .within(".grip", grip, 0, 1, "a number")
        .done();
  }

  /** How near it is to what one person should lift. */
  LiftAnswer answer() {
    Lift usual = Lift.fromTheFloor();
    Lift lift =
        new Lift(
            reachMm.orElse(usual.reachCm() * MM_PER_CM) / MM_PER_CM,
            heightMm.orElse(usual.heightCm() * MM_PER_CM) / MM_PER_CM,
            travelMm.orElse(usual.travelCm() * MM_PER_CM) / MM_PER_CM,
            twistDegrees.orElse(usual.twistDegrees()),
            often.orElse(usual.often()),
            grip.orElse(usual.grip()));
    return LiftAnswer.of(lift, massKg);
  }
}
