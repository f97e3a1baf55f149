package strickle.book;

/**
 * What US customary units are in metric ones. Inch: 25.4 mm, 16 CFR 500.19. Pound 453.59237 g, US
 * gallon 231 in³: NIST, second-hand. All exact; the others follow from these.
 */
public final class UsUnits {

  /** One inch. */
  public static final double MM_PER_INCH = 25.4;

  /** One avoirdupois pound. */
  public static final double GRAMS_PER_POUND = 453.59237;

  /** One avoirdupois pound. */
  public static final double KG_PER_POUND = 0.45359237;

  /** One sixteenth of a pound. */
  public static final double GRAMS_PER_OUNCE = 28.349523125;

  /** One US gallon. */
  public static final double ML_PER_GALLON = 3785.411784;

  /** One 128th of a gallon. */
  public static final double ML_PER_FLUID_OUNCE = 29.5735295625;

  /** A square of 12 inches. */
  public static final double M2_PER_SQUARE_FOOT = 0.09290304;

  /** A cube of 12 inches. */
  public static final double ML_PER_CUBIC_FOOT = 28316.846592;

  private UsUnits() {}
}
