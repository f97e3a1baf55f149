package strickle.price;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

/**
 * One number that a deal rests on, which can be turned.
 *
 * @param name which it is; deals that have the same are turned together
 * @param present its value
 * @param most no more than this is possible
 * @param to the deal with another value
 */
record Turn(
    Name name, BigDecimal present, Optional<BigDecimal> most, Function<BigDecimal, Deal> to) {

  /**
   * The name of a number.
   *
   * @param piece id of the piece it is of; empty when others may share it
   */
  record Name(String what, Optional<String> piece, String unit) {}

  /** The value so many times as large, or the most there is. */
  BigDecimal times(BigDecimal factor) {
    BigDecimal value = present.multiply(factor);
    return most.map(value::min).orElse(value);
  }
}
