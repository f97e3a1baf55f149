package strickle.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;

/**
 * The maker's price ending: what every suggested price ends in.
 *
 * @param ending 0 or more and under {@code every}, with no more digits than the currency has
 * @param every how far such prices lie apart, above 0, with no more digits than the currency has
 * @param currency says how many digits a price has
 */
record PriceEnding(BigDecimal ending, BigDecimal every, CurrencyUnit currency) {

  /** An ending of prices one unit apart. */
  PriceEnding(BigDecimal ending, CurrencyUnit currency) {
    this(ending, BigDecimal.ONE, currency);
  }

  /**
   * The smallest price with this ending that is not below the one given: 43.9345 becomes 44.00 with
   * the ending 0, 43.99 with 0.99, 44.50 with 0.50, and 49.00 with 9 every 10. Only that ending is
   * used: with 0.50 no price ends in .00.
   *
   * @param price 0 or more; looked at to nine decimals (halves up)
   * @return with as many decimals as the currency has
   */
  BigDecimal upFrom(BigDecimal price) {
    BigDecimal steps =
        Exact.divide(Exact.meant(price).subtract(ending), every).setScale(0, RoundingMode.CEILING);
    BigDecimal up = steps.multiply(every).add(ending);
    return up.setScale(currency.getDecimalPlaces(), RoundingMode.UNNECESSARY);
  }
}
