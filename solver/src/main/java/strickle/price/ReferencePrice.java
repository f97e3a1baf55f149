package strickle.price;

import java.math.BigDecimal;

/**
 * A piece held against one that is bought: what it costs and what is asked for it, in percent of
 * what the bought one costs.
 *
 * @param price of the bought one
 * @param costPercent full cost in percent of it, to four decimals
 * @param pricePercent list price in percent of it, to four decimals
 */
public record ReferencePrice(BigDecimal price, BigDecimal costPercent, BigDecimal pricePercent) {

  /**
   * The comparison.
   *
   * @param reference what the bought one costs, above 0
   * @param cost full cost of a good piece
   * @param asked its list price
   */
  public static ReferencePrice of(BigDecimal reference, BigDecimal cost, BigDecimal asked) {
    return new ReferencePrice(reference, percent(cost, reference), percent(asked, reference));
  }

  private static BigDecimal percent(BigDecimal amount, BigDecimal reference) {
    return Exact.atTheDoor(Exact.divide(amount.multiply(Exact.HUNDRED), reference));
  }
}
