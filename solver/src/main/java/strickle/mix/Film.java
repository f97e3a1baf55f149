package strickle.mix;

/**
 * A coat that lies on the surface as a film. For a product that soaks into concrete no such rate
 * can be given; that is measured on a piece ({@link Uptake}).
 *
 * <p>Theoretical spreading rate and wet film as on the manufacturers' calculation sheets (10 x
 * volume solids / dry film in µm, in m²/l).
 *
 * @param solidsPercent what stays of the product, in percent by volume (not by mass), above 0, at
 *     most 100
 * @param dryMicrons thickness of one dry coat in µm, above 0, at most 10000
 */
public record Film(double solidsPercent, double dryMicrons) {

  /** The thickest film taken, in µm. */
  public static final double MOST_MICRONS = 10_000;

  private static final double PERCENT = 100;

  /** Refuses what no coat has. */
  public Film {
    must(solidsPercent > 0 && solidsPercent <= PERCENT, "solids by volume in percent");
    must(dryMicrons > 0 && dryMicrons <= MOST_MICRONS, "a dry film in µm");
  }

  /** Square metres one litre covers with one coat, nothing lost. */
  public double m2PerLitre() {
    return 10 * solidsPercent / dryMicrons;
  }

  /** Thickness of one coat when it is put on, in µm. */
  public double wetMicrons() {
    return dryMicrons * PERCENT / solidsPercent;
  }

  /**
   * Litres for an area.
   *
   * @param m2 0 or more
   * @param coats 1 or more
   * @param lossPercent of the product that ends in brush, pad and cup, 0 to below 100
   */
  public double litres(double m2, int coats, double lossPercent) {
    must(m2 >= 0 && Double.isFinite(m2), "an area in m²");
    must(coats >= 1, "a number of coats");
    must(lossPercent >= 0 && lossPercent < PERCENT, "a loss in percent");
    return m2 * coats / (m2PerLitre() * (1 - lossPercent / PERCENT));
  }

  private static void must(boolean holds, String what) {
    if (!holds) {
      throw new IllegalArgumentException("This is not " + what + " that can be.");
    }
  }
}
