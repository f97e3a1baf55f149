package strickle.shop;

import java.util.List;

/**
 * Kinds of jobs whose first activities may be done together, as one lot.
 *
 * @param name what a person calls it
 * @param sharedMinutes minutes of a lot's first activity that come once, whatever is in it
 * @param tailMinutes the last of these minutes, during which the jobs are already waiting
 * @param limits the most of each measure a lot may hold; the jobs' amounts are added up
 * @param longestMinutes the longest a lot's first activity may take
 */
public record Family(
    String name, int sharedMinutes, int tailMinutes, List<Long> limits, int longestMinutes) {

  /** Refuses a tail longer than the shared minutes. */
  public Family {
    if (tailMinutes < 0 || sharedMinutes < tailMinutes) {
      throw new IllegalArgumentException(
          name + ": tail of 0 to " + sharedMinutes + " minutes, not " + tailMinutes);
    }
    limits = List.copyOf(limits);
  }

  /** A family that never shares: each job is a lot of its own, with no minutes added. */
  public static Family alone() {
    return new Family("", 0, 0, List.of(0L), Integer.MAX_VALUE);
  }
}
