package strickle.cure;

/**
 * Whether the air lets a coat be put on: a rule of thumb from the painting of steel, where the
 * surface is at least 3 °C above the dew point and the air at most 85 % humid (trade practice tied
 * to ISO 8502-4 and ISO 12944-7, second-hand). The product's sheet goes first.
 *
 * @param dewPointC the dew point in °C
 * @param surfaceC temperature of the piece in °C
 * @param humidityPercent relative humidity of the air, 1 to 100
 */
public record CoatingAir(double dewPointC, double surfaceC, double humidityPercent) {

  /** The surface is at least so much warmer than the dew point, in °C. */
  public static final double LEAST_MARGIN_C = 3;

  /** The air is at most so humid, in percent. */
  public static final double MOST_HUMIDITY_PERCENT = 85;

  /** So that 13 °C over a dew point of 10 °C pass whatever the last digit says. */
  private static final double TOLERANCE = 1e-9;

  /**
   * The air over a piece.
   *
   * @throws IllegalArgumentException for air {@link DewPoint#c} does not take, or a surface that is
   *     not from −45 to 100 °C
   */
  public static CoatingAir of(double airC, double humidityPercent, double surfaceC) {
    if (!(surfaceC >= DewPoint.COLDEST_C && surfaceC <= 100)) {
      throw new IllegalArgumentException(
          "A surface of " + surfaceC + " °C cannot be coated; it is from -45 to 100 °C.");
    }
    return new CoatingAir(DewPoint.c(airC, humidityPercent), surfaceC, humidityPercent);
  }

  /** By how much the surface is warmer than the dew point, in °C; below 0 water settles on it. */
  public double marginC() {
    return surfaceC - dewPointC;
  }

  /** Whether the surface is warm enough. */
  public boolean isWarmEnough() {
    return marginC() + TOLERANCE >= LEAST_MARGIN_C;
  }

  /** Whether the air is dry enough. */
  public boolean isDryEnough() {
    return humidityPercent <= MOST_HUMIDITY_PERCENT + TOLERANCE;
  }

  /** Whether the rule allows a coat. */
  public boolean isGood() {
    return isWarmEnough() && isDryEnough();
  }
}
