package strickle.plan.learn;

/**
 * The share of pieces that turn out, beta-binomial: before anything is recorded the share is taken
 * to be a beta distribution about the book's, worth as much as {@value #PIECES} pieces; what turns
 * out and what does not is added to it. Source: the conjugate prior of a binomial count, value from
 * memory.
 */
final class GoodShare {

  /** How many pieces the book's own figure counts for. */
  static final int PIECES = 20;

  private static final double TAIL = 0.05;
  private static final int HALVINGS = 60;
  private static final int SLICES = 4000;

  private GoodShare() {}

  /**
   * The share with its band.
   *
   * @param before the book's share, above 0 and at most 1
   * @param good pieces that turned out
   * @param lost pieces that did not
   */
  static Estimate of(double before, long good, long lost) {
    // A book that says that all turn out has not seen enough: half a piece of twenty may not.
    double share = Math.min(before, 1 - 0.5 / PIECES);
    double a = PIECES * share + good;
    double b = PIECES * (1 - share) + lost;
    // Nothing that was recorded speaks against all turning out when nothing is lost.
    double high = lost == 0 ? 1 : quantile(a, b, 1 - TAIL);
    return new Estimate(a / (a + b), quantile(a, b, TAIL), high);
  }

  /** Below this lies such a part of the beta distribution; found by halving. */
  static double quantile(double a, double b, double part) {
    double low = 0;
    double high = 1;
    double all = area(a, b, 1);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean below = area(a, b, middle) < part * all;
      low = below ? middle : low;
      high = below ? high : middle;
    }
    return (low + high) / 2;
  }

  /**
   * ∫ x^(a−1) (1−x)^(b−1) up to a limit, on the scale of its highest point, by Simpson's rule over
   * u with x = u²(3 − 2u), which is smooth at both ends however small a and b are.
   */
  private static double area(double a, double b, double limit) {
    double top = Math.min(1 - 1e-12, Math.max(1e-12, a / (a + b)));
    double scale = a * Math.log(top) + b * Math.log1p(-top);
    double end = inverse(limit);
    double step = end / SLICES;
    double sum = 0;
    for (int i = 0; i <= SLICES; i++) {
      int weight = i == 0 || i == SLICES ? 1 : 2 + 2 * (i % 2);
      sum += weight * density(a, b, i * step, scale);
    }
    return sum * step / 3;
  }

  private static double density(double a, double b, double u, double scale) {
    double x = u * u * (3 - 2 * u);
    if (x <= 0 || x >= 1) {
      return 0;
    }
    double slope = 6 * u * (1 - u);
    return slope * Math.exp((a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x) - scale);
  }

  /** The u of which u²(3 − 2u) is x. */
  private static double inverse(double x) {
    return x >= 1 ? 1 : 0.5 - Math.sin(Math.asin(1 - 2 * x) / 3);
  }
}
