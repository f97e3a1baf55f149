package strickle.plan.audit;

import strickle.book.Piece;

/** How likely castings bring enough good pieces when each turns out good or not by itself. */
final class Sure {

  /** Below this a difference between two chances is rounding. */
  private static final double TOLERANCE = 1e-9;

  /** Sums are brought down by this before they grow too large to hold. */
  private static final double LARGE = 1e250;

  private Sure() {}

  /** Whether so many castings bring so many good pieces in {@code percent} of a hundred cases. */
  static boolean covers(Piece piece, int cavities, long castings, long goodPieces, double percent) {
    double sure = 1 - tooFew(castings * cavities, piece.goodPercent() / 100, goodPieces);
    return sure >= percent / 100 - TOLERANCE;
  }

  /**
   * The chance that fewer than {@code wanted} of {@code pieces} turn out good: the sum over k from
   * 0 to wanted − 1 of C(n, k) p^k q^(n−k), each term from the one before it, and q^n, the first,
   * put to the sum at the end by its logarithm.
   */
  static double tooFew(long pieces, double good, long wanted) {
    if (wanted <= 0) {
      return 0;
    }
    if (wanted > pieces || good >= 1) {
      return wanted > pieces ? 1 : 0;
    }
    double odds = good / (1 - good);
    double term = 1;
    double sum = 1;
    double logarithm = pieces * Math.log1p(-good);
    for (long k = 1; k < wanted; k++) {
      term *= (pieces - k + 1) * odds / k;
      sum += term;
      if (sum > LARGE) {
        term /= LARGE;
        sum /= LARGE;
        logarithm += Math.log(LARGE);
      }
    }
    return Math.min(1, Math.exp(Math.log(sum) + logarithm));
  }
}
