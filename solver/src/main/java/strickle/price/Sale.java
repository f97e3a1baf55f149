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

  /**
   * The list price for a markup on the full cost: the net that is the cost and as many percent of
   * it more. Source: markup on cost (OpenStax, Principles of Accounting 2, m68079), where 8 with 20
   * % is 9.60; a channel's discount and fees come on top.
   */
  public BigDecimal priceForMarkup(UnitCost cost, BigDecimal markupPercent) {
    BigDecimal more = BigDecimal.ONE.add(Exact.fraction(markupPercent));
    return priceForNet(cost.full().multiply(more));
  }

  /**
   * The list price at which the maker earns so much by the hour, wage and profit together: the net
   * that is material, wear and overhead, and the hours at that rate.
   */
  public BigDecimal priceForHourly(UnitCost cost, BigDecimal hourly) {
    BigDecimal earned = Exact.divide(cost.minutes().multiply(hourly), Exact.MINUTES_PER_HOUR);
    return priceForNet(cost.withoutLabour().add(earned));
  }

  /** The list price that leaves so much: P = (net + k)/((1 − d)(1 − f)). */
  private BigDecimal priceForNet(BigDecimal net) {
    BigDecimal kept = Exact.remainder(channel.percentFee());
    return Exact.divide(net.add(channel.fixedFee()), paid().multiply(kept));
  }

  /** Whether less than the list price is paid, as a shop does that sells on. */
  public boolean isToAShop() {
    return channel.discountPercent().signum() > 0;
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

  /** The same at another fixed fee. */
  Sale withFixedFee(BigDecimal amount) {
    return new Sale(
        new Channel(
            channel.id(), channel.name(), channel.percentFee(), amount, channel.discountPercent()));
  }

  /** The same with another discount off the list price. */
  Sale withDiscount(BigDecimal percent) {
    return new Sale(
        new Channel(
            channel.id(), channel.name(), channel.percentFee(), channel.fixedFee(), percent));
  }
}
