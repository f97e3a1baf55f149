package strickle.price;

import java.math.BigDecimal;
import java.util.Optional;

/** How much has to be sold until a fixed cost is paid. */
public final class BreakEven {

  private BreakEven() {}

  /**
   * Units = fixed cost / (price − variable cost). Source: OpenStax, Principles of Accounting 2,
   * m68116.
   *
   * @param fixed what is paid however much is sold, 0 or more
   * @param price of a unit
   * @param variable what a unit costs
   * @return unrounded; nothing when a unit earns nothing towards it
   */
  public static Optional<BigDecimal> units(
      BigDecimal fixed, BigDecimal price, BigDecimal variable) {
    BigDecimal contribution = price.subtract(variable);
    return contribution.signum() > 0
        ? Optional.of(Exact.divide(fixed, contribution))
        : Optional.empty();
  }
}
