package strickle.price;

import java.math.BigDecimal;
import strickle.book.Pack;

/**
 * How much of one material a piece needs, and at what price it is bought. A material that is used
 * in several places (in the mix and on the route, say) is one need.
 *
 * @param what the material's name
 * @param packQuantity how much is in a pack, in the material's unit, above 0
 * @param packPrice what a pack costs, in the book's currency
 * @param mix what one casting takes of it in the mix, in the material's unit
 * @param mould what one casting takes of it beside the mix
 * @param route what one piece takes of it on its route, good or not
 * @param packing what one good piece takes of it at its packing
 */
record MaterialNeed(
    String what,
    BigDecimal packQuantity,
    BigDecimal packPrice,
    BigDecimal mix,
    BigDecimal mould,
    BigDecimal route,
    BigDecimal packing) {

  /** A material that is not needed anywhere yet. */
  static MaterialNeed of(String what, Pack pack) {
    BigDecimal none = BigDecimal.ZERO;
    return new MaterialNeed(what, pack.quantity(), pack.price(), none, none, none, none);
  }

  /** The same and more, each part by itself. */
  MaterialNeed plus(
      BigDecimal moreMix, BigDecimal moreMould, BigDecimal moreRoute, BigDecimal morePacking) {
    return new MaterialNeed(
        what,
        packQuantity,
        packPrice,
        mix.add(moreMix),
        mould.add(moreMould),
        route.add(moreRoute),
        packing.add(morePacking));
  }

  /** The same bought at another price. */
  MaterialNeed at(BigDecimal otherPackPrice) {
    return new MaterialNeed(what, packQuantity, otherPackPrice, mix, mould, route, packing);
  }

  /** The same with another amount in the mix. */
  MaterialNeed withMix(BigDecimal otherMix) {
    return new MaterialNeed(what, packQuantity, packPrice, otherMix, mould, route, packing);
  }

  /**
   * What it costs a good piece: (mix and mould consumables of a casting / cavities + route
   * consumables) / g + packing, at pack price / pack quantity. All over one denominator, so that it
   * is rounded once at most.
   *
   * @param cavities pieces of a casting
   * @param goodShare g, above 0 and at most 1
   */
  BigDecimal costOfGoodPiece(BigDecimal cavities, BigDecimal goodShare) {
    BigDecimal good = cavities.multiply(goodShare);
    BigDecimal quantity = mix.add(mould).add(cavities.multiply(route)).add(good.multiply(packing));
    return Exact.divide(quantity.multiply(packPrice), packQuantity.multiply(good));
  }

  /** What it costs a good piece at its packing. */
  BigDecimal packingCost() {
    return Exact.divide(packing.multiply(packPrice), packQuantity);
  }
}
