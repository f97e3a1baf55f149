package strickle.price;

import java.math.BigDecimal;

/** Profit in percent of the cost (a markup) and in percent of the price (a margin). */
public final class Markup {

  private Markup() {}

  /**
   * The margin that a markup is: g = m/(1 + m). A keystone markup of 100 % is a margin of 50 %: the
   * shop asks twice what it pays (Monash business marketing dictionary, "keystone markup").
   *
   * @param markupPercent above -100
   * @return in percent, to four decimals
   */
  public static BigDecimal toMargin(BigDecimal markupPercent) {
    BigDecimal hundredfold = markupPercent.multiply(Exact.HUNDRED);
    return Exact.atTheDoor(Exact.divide(hundredfold, Exact.HUNDRED.add(markupPercent)));
  }

  /**
   * The markup that a margin is: m = g/(1 − g).
   *
   * @param marginPercent under 100
   * @return in percent, to four decimals
   */
  public static BigDecimal ofMargin(BigDecimal marginPercent) {
    BigDecimal hundredfold = marginPercent.multiply(Exact.HUNDRED);
    return Exact.atTheDoor(Exact.divide(hundredfold, Exact.HUNDRED.subtract(marginPercent)));
  }
}
