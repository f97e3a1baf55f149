package strickle.price;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The few rules of decimal arithmetic that the whole package keeps. */
final class Exact {

  /** Decimals of an amount that leaves the package. */
  static final int DECIMALS = 4;

  private static final int MEANT = 9;

  static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

  /** 34 significant digits (IEEE 754 decimal128): for quotients that do not come out even. */
  private static final MathContext QUOTIENT = MathContext.DECIMAL128;

  private Exact() {}

  /** {@code dividend / divisor}, exact when it comes out even within 34 digits. */
  static BigDecimal divide(BigDecimal dividend, BigDecimal divisor) {
    return dividend.divide(divisor, QUOTIENT);
  }

  /** A percentage as a fraction of one: 92 becomes 0.92. */
  static BigDecimal fraction(BigDecimal percent) {
    return percent.movePointLeft(2);
  }

  /** A percentage as a fraction of one, by the shortest decimal that names the double. */
  static BigDecimal fraction(double percent) {
    return fraction(BigDecimal.valueOf(percent));
  }

  /** What is left of one when a percentage has gone: 2.9 becomes 0.971. */
  static BigDecimal remainder(BigDecimal percent) {
    return BigDecimal.ONE.subtract(fraction(percent));
  }

  /** The amount as it leaves the package: four decimals, halves away from zero. */
  static BigDecimal atTheDoor(BigDecimal amount) {
    return amount.setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  /**
   * The amount to the decimals that carry meaning. Masses come from binary arithmetic good to some
   * fifteen digits: without this a price of exactly 44 could arrive as 44.00000000000001 and cost
   * the buyer a unit more.
   */
  static BigDecimal meant(BigDecimal amount) {
    return amount.setScale(MEANT, RoundingMode.HALF_UP);
  }
}
