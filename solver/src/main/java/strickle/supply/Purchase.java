package strickle.supply;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A material that a plan uses, and what to buy of it. Quantities are in its unit, to a tenth; money
 * is in the book's currency.
 *
 * @param material its id
 * @param needed what the plan uses in all
 * @param onHand what is in stock
 * @param packs whole packs to buy, 0 when the stock is enough
 * @param cost what they cost
 * @param left what is left after the plan
 * @param firstUse when the plan first uses it
 * @param runsOut when something first needs more than there is in stock
 * @param orderBy the last day to order, so that it is there on that day: as many days before as it
 *     takes to come
 * @param arrives the first day it can be there if it is ordered now
 */
public record Purchase(
    String material,
    BigDecimal needed,
    BigDecimal onHand,
    long packs,
    BigDecimal cost,
    BigDecimal left,
    OffsetDateTime firstUse,
    Optional<OffsetDateTime> runsOut,
    Optional<LocalDate> orderBy,
    LocalDate arrives) {}
