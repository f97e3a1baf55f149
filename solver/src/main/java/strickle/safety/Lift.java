package strickle.safety;

/**
 * A lift with both hands, judged by the NIOSH equation in its metric form: RWL = LC·HM·VM·DM·AM·
 * FM·CM, LC 23 kg, HM 25/H, VM 1 − 0.003|V − 75|, DM 0.82 + 4.5/D, AM 1 − 0.0032A. Second-hand from
 * a page-cited copy of DHHS (NIOSH) 94-110; the constant read at ccohs.org. The form in pounds
 * differs from it by about 1 %. Not for one hand, a seat, a shovel, or an unsteady load.
 *
 * @param reachCm from the ankles to the hands, level, H; below 25 counts as 25, above 63 is too far
 * @param heightCm of the hands above the floor where the lift begins, V, 0 to 175
 * @param travelCm up or down, D, below 25 counts as 25, at most 175
 * @param twistDegrees A, 0 to 135
 * @param often the multiplier for how often, FM, 0 to 1; 1 for now and then
 * @param grip the multiplier for the grip, CM, 0 to 1; 1 for good handles
 */
public record Lift(
    double reachCm,
    double heightCm,
    double travelCm,
    double twistDegrees,
    double often,
    double grip) {

  /** What may be lifted at the very best, in kg. */
  public static final double MOST_KG = 23;

  /** The multiplier of a load that is hard to hold, such as a mould (value from memory). */
  public static final double POOR_GRIP = 0.9;

  private static final double NEAREST_CM = 25;
  private static final double FARTHEST_CM = 63;
  private static final double HIGHEST_CM = 175;
  private static final double KNUCKLE_CM = 75;
  private static final double MOST_TWIST = 135;

  /** Refuses what is no lift. */
  public Lift {
    within("A reach in cm", reachCm, 1000);
    within("A height in cm", heightCm, 1000);
    within("A travel in cm", travelCm, 1000);
    within("A twist in degrees", twistDegrees, 180);
    within("A multiplier for how often", often, 1);
    within("A multiplier for the grip", grip, 1);
  }

  /** From the floor to a table, 40 cm in front, now and then, with a poor grip. */
  public static Lift fromTheFloor() {
    return new Lift(40, 0, KNUCKLE_CM, 0, 1, POOR_GRIP);
  }

  /** The recommended limit in kg, 0 to 23. */
  public double limitKg() {
    return MOST_KG * reachFactor() * heightFactor() * travelFactor() * twistFactor() * often * grip;
  }

  /** A load over its limit: 1 or less is aimed at; infinite when nothing should be lifted so. */
  public double index(double kg) {
    return kg / limitKg();
  }

  /** HM. */
  public double reachFactor() {
    return reachCm > FARTHEST_CM ? 0 : NEAREST_CM / Math.max(NEAREST_CM, reachCm);
  }

  /** VM. */
  public double heightFactor() {
    return heightCm > HIGHEST_CM ? 0 : 1 - 0.003 * Math.abs(heightCm - KNUCKLE_CM);
  }

  /** DM. */
  public double travelFactor() {
    return travelCm > HIGHEST_CM ? 0 : 0.82 + 4.5 / Math.max(NEAREST_CM, travelCm);
  }

  /** AM. */
  public double twistFactor() {
    return twistDegrees > MOST_TWIST ? 0 : 1 - 0.0032 * twistDegrees;
  }

  private static void within(String what, double value, double most) {
    if (!(0 <= value && value <= most)) {
      throw new IllegalArgumentException(
          what + " of " + value + " cannot be; it is from 0 to " + most + ".");
    }
  }
}
