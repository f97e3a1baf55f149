package strickle.book;

import java.math.BigDecimal;

/**
 * A material as bought.
 *
 * @param quantity how much is in a pack, in the material's unit, above 0
 * @param price what a pack costs, in the book's currency, 0 or more
 */
public record Pack(BigDecimal quantity, BigDecimal price) {

  /**
   * Checks the pack.
   *
   * @throws Faulty with every fault, paths relative to the pack
   */
  public Pack {
    Check check = new Check();
    check.positive(".quantity", quantity);
    check.amount(".price", price);
    check.done();
  }
}
