package strickle.cure;

/** The temperature at which the air's water settles on a surface. */
public final class DewPoint {

  /** The coldest air the formula is made for, in °C (value from memory). */
  public static final double COLDEST_C = -45;

  /** The warmest, in °C (value from memory). */
  public static final double WARMEST_C = 60;

  /** Drier than this no room is, in percent; the formula has no answer for 0. */
  public static final double DRIEST_PERCENT = 1;

  private static final double A = 17.62;
  private static final double B = 243.12;
  private static final double PERCENT = 100;

  private DewPoint() {}

  /**
   * The dew point by Magnus' formula: bγ/(a − γ), γ = ln(RH/100) + aT/(b + T), with a = 17.62 and b
   * = 243.12 °C (WMO Guide No. 8, Annex 4.B, second-hand).
   *
   * @param airC −45 to 60 °C
   * @param humidityPercent 1 to 100
   * @return °C, at most {@code airC}
   * @throws IllegalArgumentException for anything outside these ranges
   */
  public static double c(double airC, double humidityPercent) {
    if (!(COLDEST_C <= airC && airC <= WARMEST_C)) {
      throw new IllegalArgumentException(
          "Air of " + airC + " °C has no dew point here; it is from -45 to 60 °C.");
    }
    if (!(DRIEST_PERCENT <= humidityPercent && humidityPercent <= PERCENT)) {
      throw new IllegalArgumentException(
          "A humidity of " + humidityPercent + " % has no dew point; it is from 1 to 100 %.");
    }
    double gamma = Math.log(humidityPercent / PERCENT) + A * airC / (B + airC);
    return B * gamma / (A - gamma);
  }
}
