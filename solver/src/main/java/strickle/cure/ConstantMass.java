package strickle.cure;

/** The rule by which standards call a mass constant. */
public final class ConstantMass {

  private ConstantMass() {}

  /**
   * By how much two masses differ, in percent of the lesser (ASTM C642 §5.1, which asks for less
   * than 0.5 % between two weighings 24 hours apart in an oven).
   *
   * @param one grams, above 0
   * @param other grams, above 0
   * @return 0 or more
   * @throws IllegalArgumentException for a mass that is not above 0
   */
  public static double percent(double one, double other) {
    double lesser = Math.min(one, other);
    if (!(lesser > 0)) {
      throw new IllegalArgumentException(
          "Masses of " + one + " g and " + other + " g cannot be compared; both are above 0.");
    }
    return 100 * Math.abs(one - other) / lesser;
  }
}
