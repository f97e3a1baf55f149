package strickle.shop;

import java.util.List;

/**
 * A kind of job: all its jobs are alike.
 *
 * @param name what a person calls it
 * @param family index of its family
 * @param jobs how many there are to do, 0 or more
 * @param amounts what one job adds to each of the family's limits; where a family has a limit of 0
 *     and amounts of 1, no two jobs share a lot
 * @param chain the activities of a job in order; at least one
 * @param tailMinutes elapsed minutes from the end of the last activity until the job is done
 */
public record Kind(
    String name, int family, int jobs, List<Long> amounts, List<Activity> chain, int tailMinutes) {

  /** Refuses an empty chain or a negative count. */
  public Kind {
    if (jobs < 0 || tailMinutes < 0 || chain.isEmpty()) {
      throw new IllegalArgumentException(
          name + ": 0 or more jobs with an activity each, not " + jobs + " of " + chain.size());
    }
    amounts = List.copyOf(amounts);
    chain = List.copyOf(chain);
  }
}
