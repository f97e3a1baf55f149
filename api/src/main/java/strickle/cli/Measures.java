package strickle.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import strickle.book.UsUnits;

/**
 * Puts measures into words, metric or US customary. Only text is so turned; JSON is metric always,
 * as its fields say.
 *
 * @param us whether in US customary units
 */
record Measures(boolean us) {

  private static final double OUNCES_PER_POUND = 16;
  private static final double FLUID_OUNCES_PER_GALLON = 128;
  private static final double KG_PER_M3_OF_A_POUND_PER_CUBIC_FOOT =
      1000 * UsUnits.GRAMS_PER_POUND / UsUnits.ML_PER_CUBIC_FOOT;

  /** The densities that a wet mix of a book may have, in words. */
  static final String WET = "the density of a wet mix, from 200 to 5000 kg/m³";

  private static final double LIGHTEST_KG_PER_M3 = 200;
  private static final double HEAVIEST_KG_PER_M3 = 5000;

  private static final double ROUND_OFF = 1e-9;

  /** Of less than this, in ml, one decimal would say nothing. */
  private static final double LITTLE_ML = 1;

  /** From this many on, larger units are used. */
  private static final double MANY = 10_000;

  /** Whether a wet mix may be so dense. */
  static boolean isWet(double kgPerM3) {
    return LIGHTEST_KG_PER_M3 <= kgPerM3 && kgPerM3 <= HEAVIEST_KG_PER_M3;
  }

  /** "1937.3 g", "22.700 kg", "8.50 oz", "4 lb 4.34 oz". */
  String mass(double grams) {
    if (!us) {
      return grams < MANY ? text(1, grams, "g") : text(3, grams / 1000, "kg");
    }
    // Rounded first, so that no 16.00 oz are left beside the pounds.
    double ounces = Math.rint(grams / UsUnits.GRAMS_PER_OUNCE * 100) / 100;
    double pounds = Math.floor(ounces / OUNCES_PER_POUND);
    double rest = ounces - pounds * OUNCES_PER_POUND;
    return pounds == 0 ? text(2, ounces, "oz") : text(0, pounds, "lb") + " " + text(2, rest, "oz");
  }

  /**
   * A mass as a scale shows it, with all decimals that its step has: "1237.25 g", "12.3456 kg", "1
   * lb 4.362 oz".
   *
   * @param stepGrams what the scale counts in, above 0
   */
  String weighed(double grams, double stepGrams) {
    if (!us) {
      int decimals = Math.max(1, decimals(stepGrams));
      return grams < MANY ? text(decimals, grams, "g") : text(decimals + 3, grams / 1000, "kg");
    }
    int decimals = Math.max(2, decimals(stepGrams / UsUnits.GRAMS_PER_OUNCE));
    double scale = Math.pow(10, decimals);
    double ounces = Math.rint(grams / UsUnits.GRAMS_PER_OUNCE * scale) / scale;
    double pounds = Math.floor(ounces / OUNCES_PER_POUND);
    double rest = ounces - pounds * OUNCES_PER_POUND;
    String small = text(decimals, pounds == 0 ? ounces : rest, "oz");
    return pounds == 0 ? small : text(0, pounds, "lb") + " " + small;
  }

  /** The fewest decimals that show a step: 2 of 0.05, 3 of 0.0035. */
  private static int decimals(double step) {
    return (int) Math.ceil(-Math.log10(step) - ROUND_OFF);
  }

  /** "750.0 ml", "12.000 l", "12.50 fl oz", "1.250 gal"; of very little three figures. */
  String volume(double ml) {
    if (0 < ml && ml < LITTLE_ML) {
      return us ? figures(ml / UsUnits.ML_PER_FLUID_OUNCE) + " fl oz" : figures(ml) + " ml";
    }
    if (!us) {
      return ml < MANY ? text(1, ml, "ml") : text(3, ml / 1000, "l");
    }
    double ounces = Math.rint(ml / UsUnits.ML_PER_FLUID_OUNCE * 100) / 100;
    return ounces < FLUID_OUNCES_PER_GALLON
        ? text(2, ounces, "fl oz")
        : text(3, ml / UsUnits.ML_PER_FLUID_OUNCE / FLUID_OUNCES_PER_GALLON, "gal");
  }

  /** "12.5 mm", "0.492 in". */
  String length(double mm) {
    return us ? text(3, mm / UsUnits.MM_PER_INCH, "in") : text(1, mm, "mm");
  }

  /** "0.5000 m²", "5.382 ft²". */
  String area(double squareMetres) {
    return us
        ? text(3, squareMetres / UsUnits.M2_PER_SQUARE_FOOT, "ft²")
        : text(4, squareMetres, "m²");
  }

  /** "2150 kg/m³", "134.2 lb/ft³". */
  String density(double kgPerM3) {
    return us
        ? String.format(Locale.ROOT, "%.1f lb/ft³", kgPerM3 / KG_PER_M3_OF_A_POUND_PER_CUBIC_FOOT)
        : String.format(Locale.ROOT, "%.0f kg/m³", kgPerM3);
  }

  /** "18.0 °C", "64.4 °F". */
  String temperature(double celsius) {
    return us ? text(1, celsius * 9 / 5 + 32, "°F") : text(1, celsius, "°C");
  }

  private static String figures(double value) {
    return new BigDecimal(value, new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** A number with so many decimals and its unit. */
  private static String text(int decimals, double value, String unit) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value) + " " + unit;
  }
}
