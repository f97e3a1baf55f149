package strickle.cure;

/** How fast concrete ages at a temperature. */
public final class EquivalentAge {

  /** The coldest temperature taken, in degrees Celsius. */
  public static final double COLDEST_C = -50;

  /** The warmest temperature taken, in degrees Celsius. */
  public static final double WARMEST_C = 100;

  private EquivalentAge() {}

  /**
   * Hours of age gained in one hour at {@code temperatureC}, against hours at 20 °C: exp(13.65 −
   * 4000/(273 + T)), EN 1992-1-1 Annex B, Eq. B.10. At 20 °C the standard's own factor is 0.998.
   * The standard gives it for 0 to 80 °C; below freezing take it as a rough figure.
   *
   * @param temperatureC from {@value #COLDEST_C} to {@value #WARMEST_C} °C
   * @return above 0, larger the warmer it is
   * @throws IllegalArgumentException outside that range
   */
  public static double factor(double temperatureC) {
    mustBePossible(temperatureC);
    return Math.exp(13.65 - 4000 / (273 + temperatureC));
  }

  /** Refuses a temperature that no room has. */
  static void mustBePossible(double temperatureC) {
    if (!(temperatureC >= COLDEST_C && temperatureC <= WARMEST_C)) {
      throw new IllegalArgumentException(
          "A room at " + temperatureC + " °C cannot be; the temperature is from -50 to 100 °C.");
    }
  }
}
