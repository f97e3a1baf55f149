package strickle.book;

import java.math.BigDecimal;

/**
 * How much of a material is used up.
 *
 * @param material id of the material
 * @param quantity in the material's unit, above 0
 */
public record Use(String material, BigDecimal quantity) {

  /**
   * Checks the use.
   *
   * @throws Faulty with every fault, paths relative to the use
   */
  public Use {
    Check check = new Check();
    check.id(".material", material);
    check.positive(".quantity", quantity);
    check.done();
  }
}
