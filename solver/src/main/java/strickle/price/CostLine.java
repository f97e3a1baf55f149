package strickle.price;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * One line of the full cost of a good piece.
 *
 * @param what the name of a material or a form; "labour" and "overhead" for those two
 * @param kind the kind of cost
 * @param amount in the book's currency, to four decimals, rounded so that all lines of a piece add
 *     up to its full cost
 */
public record CostLine(String what, CostKind kind, BigDecimal amount) {

  /** Refuses a missing part. */
  public CostLine {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(amount, "amount");
  }
}
