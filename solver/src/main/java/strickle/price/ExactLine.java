package strickle.price;

import java.math.BigDecimal;

/**
 * One line of a cost before it is rounded.
 *
 * @param what the material's or form's name, or the kind's own word
 * @param kind the kind of cost
 * @param amount in the book's currency, unrounded
 */
public record ExactLine(String what, CostKind kind, BigDecimal amount) {}
