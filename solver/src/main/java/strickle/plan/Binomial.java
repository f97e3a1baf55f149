package strickle.plan;

/**
 * The binomial distribution: how likely so many good pieces are out of so many, when each turns out
 * good by itself with the same chance.
 */
final class Binomial {

  /** Terms so much smaller than the largest change nothing that a double can hold. */
  private static final double NEGLIGIBLE = 1e-22;

  private Binomial() {}

  /**
   * The chance of {@code wanted} good ones or more, Σ from k = wanted to n of C(n, k) p^k
   * (1−p)^(n−k). The terms are counted from the likeliest one outward by their ratios, (n−k)/(k+1)
   * p/(1−p), and put against the sum of all of them, so that none has to be known by itself and
   * none overflows.
   *
   * @param trials n, 0 or more
   * @param chance p, from 0 to 1
   * @return 0 to 1, to about 12 digits
   */
  static double atLeast(long trials, double chance, long wanted) {
    if (wanted <= 0) {
      return 1;
    }
    if (wanted > trials || chance <= 0) {
      return 0;
    }
    return chance >= 1 ? 1 : tail(trials, chance / (1 - chance), mode(trials, chance), wanted);
  }

  private static long mode(long trials, double chance) {
    return Math.min(trials, (long) Math.floor((trials + 1) * chance));
  }

  private static double tail(long trials, double odds, long mode, long wanted) {
    double enough = mode >= wanted ? 1 : 0;
    double missing = 1 - enough;
    double term = 1;
    for (long k = mode; k < trials && term > NEGLIGIBLE; k++) {
      term *= (double) (trials - k) / (k + 1) * odds;
      enough += k + 1 >= wanted ? term : 0;
      missing += k + 1 >= wanted ? 0 : term;
    }
    term = 1;
    for (long k = mode; k > 0 && term > NEGLIGIBLE; k--) {
      term *= k / ((trials - k + 1) * odds);
      enough += k - 1 >= wanted ? term : 0;
      missing += k - 1 >= wanted ? 0 : term;
    }
    return enough / (enough + missing);
  }
}
