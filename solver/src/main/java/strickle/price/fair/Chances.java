package strickle.price.fair;

/** How likely it is that so many of a piece could be sold. */
@FunctionalInterface
public interface Chances {

  /**
   * P(D ≥ k), from 0 to 1; never grows with k.
   *
   * @param pieces k, 1 or more
   */
  double atLeast(int pieces);
}
