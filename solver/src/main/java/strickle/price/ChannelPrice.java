package strickle.price;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * What a piece brings, and should be listed at, in one channel. Amounts are in the book's currency
 * to four decimals; the list price stands as the book gives it and the suggested price in the
 * currency's own digits. Without a list price nothing is known of what the piece brings: price,
 * net, profit, margin and earned per hour are left out.
 *
 * @param channel the channel's id
 * @param price the piece's list price
 * @param net what is left of the list price after discount and fees
 * @param profit net less full cost; below 0 is a loss
 * @param marginPercent profit in percent of what the buyer pays; left out for a price of 0
 * @param earnedPerHour what an attended hour brings, wage included; left out for a piece that takes
 *     no attended time
 * @param breakEven the list price at which the profit is 0
 * @param suggested the list price for the margin asked, rounded up to the price ending asked
 * @param wholesale what a shop pays of the list price; empty in a channel without a discount
 * @param forMarkup the list price for the markup asked, rounded up in the same way; empty when none
 *     is asked
 * @param forHourly the list price for what the maker wants to earn by the hour, rounded up in the
 *     same way; empty when nothing is asked
 * @param discounted what the discount asked about does; empty when none is
 */
public record ChannelPrice(
    String channel,
    Optional<BigDecimal> price,
    Optional<BigDecimal> net,
    Optional<BigDecimal> profit,
    Optional<BigDecimal> marginPercent,
    Optional<BigDecimal> earnedPerHour,
    BigDecimal breakEven,
    BigDecimal suggested,
    Optional<BigDecimal> wholesale,
    Optional<BigDecimal> forMarkup,
    Optional<BigDecimal> forHourly,
    Optional<Discounted> discounted) {

  /** Refuses a missing part. */
  public ChannelPrice {
    Objects.requireNonNull(channel, "channel");
    Objects.requireNonNull(price, "price");
    Objects.requireNonNull(net, "net");
    Objects.requireNonNull(profit, "profit");
    Objects.requireNonNull(marginPercent, "marginPercent");
    Objects.requireNonNull(earnedPerHour, "earnedPerHour");
    Objects.requireNonNull(breakEven, "breakEven");
    Objects.requireNonNull(suggested, "suggested");
    Objects.requireNonNull(wholesale, "wholesale");
    Objects.requireNonNull(forMarkup, "forMarkup");
    Objects.requireNonNull(forHourly, "forHourly");
    Objects.requireNonNull(discounted, "discounted");
  }

  /** A channel of which nothing more is asked. */
  public ChannelPrice(
      String channel,
      Optional<BigDecimal> price,
      Optional<BigDecimal> net,
      Optional<BigDecimal> profit,
      Optional<BigDecimal> marginPercent,
      Optional<BigDecimal> earnedPerHour,
      BigDecimal breakEven,
      BigDecimal suggested) {
    this(
        channel,
        price,
        net,
        profit,
        marginPercent,
        earnedPerHour,
        breakEven,
        suggested,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
