package strickle.book;

/**
 * The water of a mix.
 *
 * @param percent 0 to 1000, by mass
 * @param of what it is a percentage of
 */
public record Water(double percent, Basis of) {

  private static final double MOST_PERCENT = 1000;
  private static final String RIGHT = "dry, cement, dry+pigment or total";

  /**
   * Checks the water.
   *
   * @throws Faulty with every fault, paths relative to the water
   */
  public Water {
    Check check = new Check();
    check.number(".percent", percent, 0, MOST_PERCENT);
    if (check.given(".of", of, RIGHT)) {
      check.that(of != Basis.WATER, ".of", "water", RIGHT);
    }
    check.done();
  }
}
