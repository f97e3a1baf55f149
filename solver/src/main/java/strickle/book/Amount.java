package strickle.book;

/**
 * Reads what a person writes for an amount, in metric or US customary units, and gives it in the
 * unit everything is worked out in. A bare number is metric. Two units may stand together, the
 * larger first ("2 lb 3 oz"), and fractions may be written as such ("3 1/2 in"). Factors are exact.
 *
 * <p>Every reading throws {@link Faulty} with one fault and an empty path: whoever knows the option
 * or field puts it in front. A unit of something else is named as what it is: a fluid ounce is a
 * volume, an ounce is a mass.
 */
public final class Amount {

  private Amount() {}

  /** A mass in grams, 0 to 10¹⁰: g, kg, mg, oz, lb. */
  public static double mass(String text) {
    return AmountReader.read(Quantity.MASS, text);
  }

  /** A volume in millilitres, 0 to 10¹⁰: ml, l, cm3, m3, fl oz, pt, qt, gal, in3, ft3, yd3. */
  public static double volume(String text) {
    return AmountReader.read(Quantity.VOLUME, text);
  }

  /** A length in millimetres, 0 to 10¹⁰: um, mm, cm, m, mil, in, ft. */
  public static double length(String text) {
    return AmountReader.read(Quantity.LENGTH, text);
  }

  /** An area in square metres, 0 to 10¹⁰: mm2, cm2, m2, in2, ft2. */
  public static double area(String text) {
    return AmountReader.read(Quantity.AREA, text);
  }

  /** A density in kilograms per cubic metre, 0 to 10¹⁰: kg/m3, g/l, g/ml, kg/l, lb/ft3, lb/gal. */
  public static double density(String text) {
    return AmountReader.read(Quantity.DENSITY, text);
  }

  /** A temperature in degrees Celsius, from absolute zero to 10,000: C or F. */
  public static double temperature(String text) {
    return Temperature.read(text);
  }
}
