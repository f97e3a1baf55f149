package strickle.price;

import java.math.BigDecimal;
import strickle.book.Demand;

/**
 * How many of a piece are expected to sell when there are enough: the sum over k of P(D ≥ k), with
 * P(D ≥ k) = 1 − F(k − 0.5) and F the triangular distribution of low, likely and high.
 */
final class ExpectedSales {

  private static final BigDecimal HALF = new BigDecimal("0.5");

  private ExpectedSales() {}

  /** The expected number, 0 or more. */
  static BigDecimal of(Demand demand) {
    BigDecimal sum = BigDecimal.ZERO;
    for (int k = 1; k <= demand.high(); k++) {
      sum = sum.add(atLeast(demand, k));
    }
    return sum;
  }

  private static BigDecimal atLeast(Demand demand, int k) {
    BigDecimal x = BigDecimal.valueOf(k).subtract(HALF);
    BigDecimal low = BigDecimal.valueOf(demand.low());
    BigDecimal likely = BigDecimal.valueOf(demand.likely());
    BigDecimal high = BigDecimal.valueOf(demand.high());
    if (x.compareTo(low) <= 0) {
      return BigDecimal.ONE;
    }
    BigDecimal width = high.subtract(low);
    if (x.compareTo(likely) < 0) {
      BigDecimal above = x.subtract(low);
      BigDecimal below = width.multiply(likely.subtract(low));
      return BigDecimal.ONE.subtract(Exact.divide(above.multiply(above), below));
    }
    BigDecimal left = high.subtract(x);
    return Exact.divide(left.multiply(left), width.multiply(high.subtract(likely)));
  }
}
