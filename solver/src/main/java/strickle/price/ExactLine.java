package strickle.price;

import java.math.BigDecimal;

/**
 * One line of a cost before it is rounded.
 *
 * @param what the material's or form's name, or the kind's own word
 * @param amount in the book's currency, unrounded
 */
record ExactLine(String what, CostKind kind, BigDecimal amount) {}
