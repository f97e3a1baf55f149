package strickle.book;

import java.math.BigDecimal;
import java.util.OptionalDouble;

/**
 * Something bought and used up: a binder, a pigment, a sealer, a box.
 *
 * @param id 1 to 64 characters; not {@value #WATER}, which every mix has and nobody buys
 * @param name 1 to 200 characters
 * @param kind what it is for, such as binder or coating; 1 to 200 characters
 * @param unit what it is counted in, such as g, ml or each; 1 to 200 characters. What is mixed is
 *     counted in g
 * @param relativeDensity density as a multiple of water's, 0.05 to 25, or empty
 * @param cementPercent cement in it by mass, 0 to 100, or empty
 * @param mostPercentOfCement of a pigment, the most its sheet allows in percent of the cement's
 *     mass, above 0, at most 100, or empty
 * @param pack how it is bought
 * @param onHand stock in {@code unit}, 0 or more
 * @param leadDays days from ordering to having it, 0 to 3650
 */
public record Material(
    String id,
    String name,
    String kind,
    String unit,
    OptionalDouble relativeDensity,
    OptionalDouble cementPercent,
    OptionalDouble mostPercentOfCement,
    Pack pack,
    BigDecimal onHand,
    int leadDays) {

  /** The reserved id of the water in a mix. */
  public static final String WATER = "water";

  private static final int LONGEST_LEAD_DAYS = 3650;

  /**
   * Checks the material.
   *
   * @throws Faulty with every fault, paths relative to the material
   */
  public Material {
    Check check = new Check();
    check.id(".id", id);
    check.that(
        !WATER.equals(id), ".id", Show.text(id), "another id: water is in every mix already");
    check.name(".name", name);
    check.name(".kind", kind);
    check.name(".unit", unit);
    check.number(".relativeDensity", relativeDensity, 0.05, 25);
    check.number(".cementPercent", cementPercent, 0, 100);
    if (check.given(".mostPercentOfCement", mostPercentOfCement, "a number or none")) {
      mostPercentOfCement.ifPresent(most -> check.positive(".mostPercentOfCement", most, 100));
    }
    check.given(".pack", pack, "a pack with its quantity and price");
    check.amount(".onHand", onHand);
    check.whole(".leadDays", leadDays, 0, LONGEST_LEAD_DAYS);
    check.done();
  }

  /** The same without a most of its own. */
  public Material(
      String id,
      String name,
      String kind,
      String unit,
      OptionalDouble relativeDensity,
      OptionalDouble cementPercent,
      Pack pack,
      BigDecimal onHand,
      int leadDays) {
    this(
        id,
        name,
        kind,
        unit,
        relativeDensity,
        cementPercent,
        OptionalDouble.empty(),
        pack,
        onHand,
        leadDays);
  }
}
