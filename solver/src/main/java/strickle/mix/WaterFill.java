package strickle.mix;

import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/** The volume of a mould by the mass of the water that fills it. */
public final class WaterFill {

  /** The temperature taken when nobody says, in degrees Celsius. */
  public static final double USUAL_C = 20;

  private static final double COLDEST_C = 0;
  private static final double WARMEST_C = 40;
  private static final double ML_PER_M3 = 1e6;
  private static final double GRAMS_PER_KG = 1000;

  private WaterFill() {}

  /**
   * Density of air-free water in kg/m³, from 0 to 40 °C, by Tanaka and others (Metrologia 38,
   * 2001), the formula recommended by the CIPM; its constants are from memory.
   *
   * @throws Faulty with an empty path for a temperature outside
   */
  public static double densityKgPerM3(double temperatureC) {
    if (!(COLDEST_C <= temperatureC && temperatureC <= WARMEST_C)) {
      throw new Faulty(
          List.of(new Fault("", temperatureC + " °C", "water from 0 to 40 °C (32 to 104 °F)")));
    }
    double t = temperatureC;
    double far = (t - 3.983035) * (t - 3.983035) * (t + 301.797);
    return 999.974950 * (1 - far / (522528.9 * (t + 69.34881)));
  }

  /**
   * Millilitres that so many grams of water fill. The air's own lift, a thousandth, is left out: a
   * studio's scale is set in the same air.
   *
   * @param waterGrams grams of water, 0 or more
   * @throws Faulty with an empty path for a temperature outside 0 to 40 °C
   */
  public static double ml(double waterGrams, double temperatureC) {
    return waterGrams / GRAMS_PER_KG / densityKgPerM3(temperatureC) * ML_PER_M3;
  }
}
