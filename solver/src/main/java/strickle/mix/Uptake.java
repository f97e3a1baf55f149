package strickle.mix;

/**
 * What absorbent concrete takes up of a product, measured on a piece: weighed before and after one
 * coat, over the area coated. Concrete drinks so differently that no sheet can say.
 *
 * @param gramsPerM2 what one coat takes, above 0
 */
public record Uptake(double gramsPerM2) {

  private static final double PERCENT = 100;

  /** Refuses what no coat takes. */
  public Uptake {
    must(gramsPerM2 > 0 && Double.isFinite(gramsPerM2), "grams on a square metre");
  }

  /**
   * As measured on a piece.
   *
   * @param beforeGrams the piece before the coat, 0 or more
   * @param afterGrams the piece right after it, more than before
   * @param m2 the area coated, above 0
   */
  public static Uptake measured(double beforeGrams, double afterGrams, double m2) {
    must(beforeGrams >= 0 && afterGrams > beforeGrams, "a piece that took anything up");
    must(m2 > 0, "an area in m²");
    return new Uptake((afterGrams - beforeGrams) / m2);
  }

  /**
   * Grams for an area, every coat taking as much as the one measured.
   *
   * @param m2 0 or more
   * @param coats 1 or more
   * @param lossPercent of the product that ends in brush, pad and cup, 0 to below 100
   */
  public double grams(double m2, int coats, double lossPercent) {
    must(m2 >= 0 && Double.isFinite(m2), "an area in m²");
    must(coats >= 1, "a number of coats");
    must(lossPercent >= 0 && lossPercent < PERCENT, "a loss in percent");
    return m2 * coats * gramsPerM2 / (1 - lossPercent / PERCENT);
  }

  private static void must(boolean holds, String what) {
    if (!holds) {
      throw new IllegalArgumentException("This is not " + what + " that can be.");
    }
  }
}
