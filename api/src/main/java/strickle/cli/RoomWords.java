package strickle.cli;

import java.util.Locale;
import strickle.book.UsUnits;
import strickle.cure.CoatingAir;
import strickle.cure.Evaporation;

/**
 * Puts what a room does into words, metric or US customary.
 *
 * @param us whether in US customary units
 */
record RoomWords(boolean us) {

  /** One lb/ft²/h, from the exact pound and foot. */
  private static final double KG_PER_M2_OF_A_POUND_PER_SQUARE_FOOT =
      UsUnits.KG_PER_POUND / UsUnits.M2_PER_SQUARE_FOOT;

  private static final double KM_PER_MILE = 1.609344;

  /** "1.15 kg/m²/h", "0.236 lb/ft²/h". */
  String rate(double kgPerM2Hour) {
    return us
        ? text("%.3f lb/ft²/h", kgPerM2Hour / KG_PER_M2_OF_A_POUND_PER_SQUARE_FOOT)
        : text("%.2f kg/m²/h", kgPerM2Hour);
  }

  /** A limit, in as many digits as it was given with: "0.5 kg/m²/h", "0.1 lb/ft²/h". */
  String limit(double kgPerM2Hour) {
    return us
        ? text("%.1f lb/ft²/h", kgPerM2Hour / KG_PER_M2_OF_A_POUND_PER_SQUARE_FOOT)
        : text("%.1f kg/m²/h", kgPerM2Hour);
  }

  /** "8.2 km/h", "5.1 mph". */
  String wind(double kmPerHour) {
    return us ? text("%.1f mph", kmPerHour / KM_PER_MILE) : text("%.1f km/h", kmPerHour);
  }

  /** "17.98 °C", "64.36 °F". */
  String temperature(double c) {
    return us ? text("%.1f °F", c * 9 / 5 + 32) : text("%.1f °C", c);
  }

  /** Degrees between two temperatures: "4.0 °C", "7.2 °F". */
  String degrees(double c) {
    return us ? text("%.1f °F", c * 9 / 5) : text("%.1f °C", c);
  }

  /** An estimate with all it may really be. */
  String estimate(Evaporation evaporation) {
    String range = rate(evaporation.least()) + " to " + rate(evaporation.most());
    return rate(evaporation.kgPerM2Hour()) + " (it may be " + range + ")";
  }

  /** What to do about an evaporation. */
  String advice(Evaporation evaporation) {
    return switch (evaporation.level()) {
      case LOW -> "slow; no need to hurry";
      case NEAR -> "may pass " + limit(Evaporation.RAISED) + ": keep wind off the pour";
      case RAISED ->
          "over " + limit(Evaporation.RAISED) + ": cover the pour; rich and fine mixes crack";
      case HIGH -> "over " + limit(Evaporation.HIGH) + ": cover the pour at once";
    };
  }

  /** Whether a coat may go on, and if not, why. */
  String advice(CoatingAir air) {
    if (air.isGood()) {
      return "a coat may go on";
    }
    String least = degrees(CoatingAir.LEAST_MARGIN_C);
    return air.isWarmEnough()
        ? "let it wait: the air is over 85 % humid"
        : "let it wait: the piece should be " + least + " above the dew point";
  }

  private static String text(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
