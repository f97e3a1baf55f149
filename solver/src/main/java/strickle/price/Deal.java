package strickle.price;

import java.math.BigDecimal;

/**
 * A piece that is sold through a channel at a price, with everything its profit rests on.
 *
 * @param model what it costs beside its minutes
 * @param minutes the work in it
 * @param sale how it is sold
 * @param price the list price, above 0
 */
record Deal(PieceModel model, MinuteSplit minutes, Sale sale, BigDecimal price) {

  /** What a good piece costs. */
  UnitCost cost() {
    return model.cost(minutes.perGoodPiece());
  }

  /** What is left of the price when everything is paid. */
  BigDecimal profit() {
    return sale.profit(price, cost());
  }

  /** Profit in percent of what the buyer pays. */
  BigDecimal marginPercent() {
    return sale.marginPercent(price, cost());
  }

  /** The full cost at which a margin just holds: P(1 − d)(1 − f − m) − k. */
  BigDecimal mostCost(BigDecimal marginPercent) {
    BigDecimal wanted = sale.revenue(price).multiply(Exact.fraction(marginPercent));
    return sale.net(price).subtract(wanted);
  }

  /** The same of another cost. */
  Deal with(PieceModel other) {
    return new Deal(other, minutes, sale, price);
  }

  /** The same with other work. */
  Deal with(MinuteSplit other) {
    return new Deal(model, other, sale, price);
  }

  /** The same sold otherwise. */
  Deal with(Sale other) {
    return new Deal(model, minutes, other, price);
  }

  /** The same at another price. */
  Deal at(BigDecimal other) {
    return new Deal(model, minutes, sale, other);
  }

  /** The same when another share of the pieces turns out good. */
  Deal withGoodShare(BigDecimal other) {
    BigDecimal good = Exact.divide(minutes.good().multiply(other), model.goodShare());
    return new Deal(model.withGoodShare(other), minutes.withGood(good), sale, price);
  }
}
