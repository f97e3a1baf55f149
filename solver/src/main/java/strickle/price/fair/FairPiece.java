package strickle.price.fair;

import java.math.BigDecimal;

/**
 * A piece of a fair: what is asked of it and what to bring. Amounts are in the book's currency, to
 * four decimals.
 *
 * @param piece its id
 * @param price what it costs at the fair
 * @param net what is left of that
 * @param cost what making one more good one costs: material, labour and wear
 * @param leftoverValue what one is worth that is not sold
 * @param wanted how many would be brought if nothing limited it
 * @param allowed how many the limits allow at best, all pieces together, before planning
 * @param bring how many to bring
 * @param stock how many of them are on hand
 * @param make how many are made for it
 * @param castings castings for those and for the orders due by the opening
 * @param sold how many are sold on average
 * @param left how many are left on average
 * @param sellsOutPercent in how many of a hundred cases all are sold
 * @param profit what bringing them is worth
 */
public record FairPiece(
    String piece,
    BigDecimal price,
    BigDecimal net,
    BigDecimal cost,
    BigDecimal leftoverValue,
    int wanted,
    int allowed,
    int bring,
    int stock,
    int make,
    int castings,
    BigDecimal sold,
    BigDecimal left,
    BigDecimal sellsOutPercent,
    BigDecimal profit) {}
