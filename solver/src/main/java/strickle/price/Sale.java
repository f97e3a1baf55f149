package strickle.price;

import java.math.BigDecimal;
import strickle.book.Channel;

/**
 * Selling through one channel, unrounded. The list price is what the price list says; a channel
 * takes its discount d off it first (a shop's share, keystone being 50 %), then its percent fee f
 * of what is left, then its fixed fee k.
 *
 * @param channel where it is sold
 */
public record Sale(Channel channel) {

  /** What the buyer or shop pays of one unit of list price: 1 − d. */
  private BigDecimal paid() {
    return Exact.remainder(channel.discountPercent());
  }

  /** Revenue = P(1 − d). */
  public BigDecimal revenue(BigDecimal listPrice) {
    return listPrice.multiply(paid());
  }

  /** Net = P(1 − d)(1 − f) − k. */
  public BigDecimal net(BigDecimal listPrice) {
    return revenue(listPrice)
        .multiply(Exact.remainder(channel.percentFee()))
        .subtract(channel.fixedFee());
  }

  /** Profit = net − full cost. */
  public BigDecimal profit(BigDecimal listPrice, UnitCost cost) {
    return net(listPrice).subtract(cost.full());
  }

  /**
   * Margin = profit / (P(1 − d)), in percent. Source: margin on price g = markup/(1 + markup), the
   * profit as a share of what the buyer pays.
   *
   * @param listPrice above 0
   */
  public BigDecimal marginPercent(BigDecimal listPrice, UnitCost cost) {
    BigDecimal hundredfold = profit(listPrice, cost).multiply(Exact.HUNDRED);
    return Exact.divide(hundredfold, revenue(listPrice));
  }

  /**
   * Earned per hour = (net − material − wear − overhead) / hours: what an attended hour brings its
   * maker, wage and profit together. Source: contribution per unit of the limiting resource
   * (OpenStax, Principles of Accounting 2, m68086), the limiting resource being attended time.
   *
   * @param cost of a piece that takes more than 0 minutes
   */
  public BigDecimal earnedPerHour(BigDecimal listPrice, UnitCost cost) {
    BigDecimal earned = net(listPrice).subtract(cost.withoutLabour());
    return Exact.divide(earned.multiply(Exact.MINUTES_PER_HOUR), cost.minutes());
  }

  /** The list price without profit or loss: P = (cost + k)/((1 − d)(1 − f)). */
  public BigDecimal breakEven(UnitCost cost) {
    return priceForMargin(cost, BigDecimal.ZERO);
  }

  /**
   * The list price for a margin m: P = (cost + k)/((1 − d)(1 − f − m)), which is the definition of
   * the margin solved for P.
   *
   * @param marginPercent such that {@link #leavesRoomFor} holds
   */
  public BigDecimal priceForMargin(UnitCost cost, BigDecimal marginPercent) {
    BigDecimal kept = Exact.remainder(channel.percentFee().add(marginPercent));
    return Exact.divide(cost.full().add(channel.fixedFee()), paid().multiply(kept));
  }

  /** Whether fee and margin together stay under 100 %; no price is high enough otherwise. */
  public boolean leavesRoomFor(BigDecimal marginPercent) {
    return channel.percentFee().add(marginPercent).compareTo(Exact.HUNDRED) < 0;
  }

  /** The same at another percent fee. */
  Sale withFee(BigDecimal percent) {
    return new Sale(
        new Channel(
            channel.id(), channel.name(), percent, channel.fixedFee(), channel.discountPercent()));
  }

  /** The same with another discount off the list price. */
  Sale withDiscount(BigDecimal percent) {
    return new Sale(
        new Channel(
            channel.id(), channel.name(), channel.percentFee(), channel.fixedFee(), percent));
  }
}
