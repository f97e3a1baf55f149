package strickle.price;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a discount on the list price does in one channel. Amounts are of one good piece, to four
 * decimals.
 *
 * @param percent off the list price
 * @param price what is then asked
 * @param net what is left of it after the channel's own discount and fees
 * @param profit net less full cost
 * @param marginPercent profit in percent of what the buyer pays
 * @param morePercent how many percent more pieces have to be sold for the same profit; empty when
 *     there is no profit with the discount, or none without
 */
public record Discounted(
    BigDecimal percent,
    BigDecimal price,
    BigDecimal net,
    BigDecimal profit,
    BigDecimal marginPercent,
    Optional<BigDecimal> morePercent) {

  /**
   * A discount on a price.
   *
   * @param price the list price, above 0
   */
  static Discounted of(BigDecimal percent, BigDecimal price, Sale sale, UnitCost cost) {
    BigDecimal lower = price.multiply(Exact.remainder(percent));
    BigDecimal before = sale.profit(price, cost);
    BigDecimal after = sale.profit(lower, cost);
    Optional<BigDecimal> more =
        before.signum() > 0 && after.signum() > 0
            ? Optional.of(Exact.divide(before.subtract(after).multiply(Exact.HUNDRED), after))
            : Optional.empty();
    return new Discounted(
        percent,
        Exact.atTheDoor(lower),
        Exact.atTheDoor(sale.net(lower)),
        Exact.atTheDoor(after),
        Exact.atTheDoor(sale.marginPercent(lower, cost)),
        more.map(Exact::atTheDoor));
  }
}
