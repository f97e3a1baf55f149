package strickle.price;

import java.math.BigDecimal;

/**
 * The forms of one kind that a casting wears out.
 *
 * @param what the form's name
 * @param bought what as many of them as a casting needs cost, in the book's currency
 * @param lifeCastings castings one lasts for, above 0
 */
record FormNeed(String what, BigDecimal bought, BigDecimal lifeCastings) {

  /** The same with another life. */
  FormNeed lasting(BigDecimal otherLifeCastings) {
    return new FormNeed(what, bought, otherLifeCastings);
  }

  /** The same at another price. */
  FormNeed costing(BigDecimal otherBought) {
    return new FormNeed(what, otherBought, lifeCastings);
  }

  /**
   * What it costs a good piece: count x cost each / life in castings / cavities / g. Source: units
   * of production (OpenStax, Principles of Accounting 1, m67897) with pours as units and no
   * salvage.
   */
  BigDecimal costOfGoodPiece(BigDecimal cavities, BigDecimal goodShare) {
    return Exact.divide(bought, lifeCastings.multiply(cavities).multiply(goodShare));
  }
}
