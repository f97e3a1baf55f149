package strickle.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What several pieces sold together at one price cost and bring. Amounts are of one bundle, in the
 * book's currency, to four decimals.
 *
 * @param items what is in it
 * @param price the list price of all together
 * @param separately the list prices one by one; empty when one of them has none
 * @param offPercent how much less the bundle costs its buyer, in percent; below 0 for more
 * @param minutes attended minutes
 * @param full full cost
 * @param channels one for each channel of the book
 */
public record BundlePrices(
    List<BundleRequest.Item> items,
    BigDecimal price,
    Optional<BigDecimal> separately,
    Optional<BigDecimal> offPercent,
    BigDecimal minutes,
    BigDecimal full,
    List<BundleChannel> channels) {

  /**
   * A bundle in one channel; its fixed fee is taken once.
   *
   * @param channel the channel's id
   * @param net what is left of the price after discount and fees
   * @param profit net less full cost
   * @param marginPercent profit in percent of what the buyer pays
   * @param profitSeparately the profit of the same pieces sold one by one; empty without list
   *     prices
   * @param breakEven the price at which the profit is 0
   * @param suggested the price for the margin asked, rounded up to the price ending asked
   */
  public record BundleChannel(
      String channel,
      BigDecimal net,
      BigDecimal profit,
      BigDecimal marginPercent,
      Optional<BigDecimal> profitSeparately,
      BigDecimal breakEven,
      BigDecimal suggested) {}

  /** Freezes the lists. */
  public BundlePrices {
    items = List.copyOf(items);
    channels = List.copyOf(channels);
  }
}
