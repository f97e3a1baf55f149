package strickle.book;

/**
 * How much of a pigment goes into a mix.
 *
 * @param material id of the pigment
 * @param percent 0 to 100, by mass
 * @param of what it is a percentage of: the dry materials or their cement, the water or the whole
 *     wet mass
 */
public record Dose(String material, double percent, Basis of) {

  /**
   * Checks the dose.
   *
   * @throws Faulty with every fault, paths relative to the dose
   */
  public Dose {
    Check check = new Check();
    check.id(".material", material);
    check.number(".percent", percent, 0, 100);
    if (check.given(".of", of, "dry, cement, water or total")) {
      check.that(of != Basis.DRY_AND_PIGMENT, ".of", "dry+pigment", "dry, cement, water or total");
    }
    check.done();
  }
}
