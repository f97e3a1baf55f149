package strickle.book;

/**
 * The share of one dry material in a mix.
 *
 * @param material id of the material
 * @param parts by mass, beside the parts of the other dry materials; above 0, at most 1000000
 */
public record Part(String material, double parts) {

  private static final double MOST_PARTS = 1_000_000;

  /**
   * Checks the part.
   *
   * @throws Faulty with every fault, paths relative to the part
   */
  public Part {
    Check check = new Check();
    check.id(".material", material);
    check.positive(".parts", parts, MOST_PARTS);
    check.done();
  }
}
