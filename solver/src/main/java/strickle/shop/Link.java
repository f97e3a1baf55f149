package strickle.shop;

/**
 * A job that has to wait for another. Only kinds with a single job and a family of their own may be
 * linked.
 *
 * <p>Less than 0 minutes let the second start before the first has ended, by so much at most. Such
 * a link goes back: turned round, it says how long after the first the second may start at the
 * latest. In a shop with a link that goes back, all linked kinds are tethered: each has one
 * activity, without workers, and the links may go round in a circle. Otherwise they must not.
 *
 * @param before index of the kind that comes first
 * @param after index of the kind that waits
 * @param minutes from the end of the first to the start of the second, at least
 */
public record Link(int before, int after, int minutes) {

  /** Whether the second may start before the first has ended. */
  boolean goesBack() {
    return minutes < 0;
  }
}
