package strickle.cure;

/**
 * A piece on the scale.
 *
 * @param days since the log began, 0 or more, at most 3650
 * @param grams above 0, at most ten tonnes
 */
public record Weighing(double days, double grams) {

  private static final double MOST_DAYS = 3650;
  private static final double MOST_GRAMS = 1e7;

  /**
   * Checks the weighing.
   *
   * @throws strickle.book.Faulty with every fault, paths relative to the weighing
   */
  public Weighing {
    Checks checks = new Checks();
    checks.between(".days", days, 0, MOST_DAYS);
    checks.above(".grams", grams, 0, MOST_GRAMS);
    checks.done();
  }
}
