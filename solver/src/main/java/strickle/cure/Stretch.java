package strickle.cure;

/**
 * Some hours at one temperature.
 *
 * @param hours elapsed hours, above 0, at most 87,600 (ten years)
 * @param temperatureC of the concrete, −30 to 80 °C
 */
public record Stretch(double hours, double temperatureC) {

  private static final double MOST_HOURS = 87_600;

  /**
   * Checks the stretch.
   *
   * @throws strickle.book.Faulty with every fault, paths relative to the stretch
   */
  public Stretch {
    Checks checks = new Checks();
    checks.above(".hours", hours, 0, MOST_HOURS);
    checks.between(".temperatureC", temperatureC, -30, 80);
    checks.done();
  }
}
