package strickle.book;

import java.util.Map;
import java.util.Optional;

/**
 * What an amount is of, with the units it may be written in. Each factor says how many of the unit
 * everything is worked out in make one. What US units are stands in {@link UsUnits}.
 */
enum Quantity {
  /** In grams. */
  MASS(
      "a mass",
      "250 g, 1.5 kg, 8 oz or 2 lb 3 oz",
      Map.of(
          "g",
          1.0,
          "kg",
          1000.0,
          "mg",
          0.001,
          "oz",
          UsUnits.GRAMS_PER_OUNCE,
          "lb",
          UsUnits.GRAMS_PER_POUND)),
  /** In millilitres. */
  VOLUME(
      "a volume",
      "750 ml, 1.2 l, 12 fl oz or 1/2 gal",
      Map.ofEntries(
          Map.entry("ml", 1.0),
          Map.entry("l", 1000.0),
          Map.entry("cm3", 1.0),
          Map.entry("m3", 1e6),
          Map.entry("floz", UsUnits.ML_PER_FLUID_OUNCE),
          Map.entry("pt", 473.176473),
          Map.entry("qt", 946.352946),
          Map.entry("gal", UsUnits.ML_PER_GALLON),
          Map.entry("in3", 16.387064),
          Map.entry("ft3", UsUnits.ML_PER_CUBIC_FOOT),
          Map.entry("yd3", 764554.857984))),
  /** In millimetres. */
  LENGTH(
      "a length",
      "80 mm, 8 cm, 3.5 in or 3 1/2 in",
      Map.of(
          "um",
          0.001,
          "mm",
          1.0,
          "cm",
          10.0,
          "m",
          1000.0,
          "mil",
          0.0254,
          "in",
          UsUnits.MM_PER_INCH,
          "ft",
          304.8)),
  /** In square metres. */
  AREA(
      "an area",
      "0.5 m2, 480 cm2 or 3 ft2",
      Map.of(
          "mm2",
          1e-6,
          "cm2",
          1e-4,
          "m2",
          1.0,
          "in2",
          0.00064516,
          "ft2",
          UsUnits.M2_PER_SQUARE_FOOT)),
  /** In kilograms per cubic metre. */
  DENSITY(
      "a density",
      "2150 kg/m3, 2.15 g/ml or 134 lb/ft3",
      Map.of(
          "kg/m3", 1.0,
          "g/l", 1.0,
          "g/ml", 1000.0,
          "g/cm3", 1000.0,
          "kg/l", 1000.0,
          "lb/ft3", 1000 * UsUnits.GRAMS_PER_POUND / UsUnits.ML_PER_CUBIC_FOOT,
          "lb/gal", 1000 * UsUnits.GRAMS_PER_POUND / UsUnits.ML_PER_GALLON)),
  /** In degrees Celsius; how it is read is told in {@link Temperature}. */
  TEMPERATURE("a temperature", Temperature.EXAMPLES, Map.of("c", 1.0, "f", 1.0));

  private final String what;
  private final String examples;

  /** Made by Map.of, which nothing changes. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final Map<String, Double> factors;

  Quantity(String what, String examples, Map<String, Double> factors) {
    this.what = what;
    this.examples = examples;
    this.factors = factors;
  }

  /** What this is, with its article: "a mass". */
  String what() {
    return what;
  }

  /** What would be right, for a fault. */
  String right() {
    return what + " such as " + examples;
  }

  /** The same with a word that says what is wrong: "a smaller mass such as …". */
  String right(String how) {
    return "a " + how + what.substring(what.indexOf(' ')) + " such as " + examples;
  }

  /** How much one of this unit is; empty for a unit of something else. */
  Optional<Double> factor(String unit) {
    return Optional.ofNullable(factors.get(unit));
  }
}
