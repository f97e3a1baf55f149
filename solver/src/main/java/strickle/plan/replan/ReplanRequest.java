package strickle.plan.replan;

import java.time.OffsetDateTime;
import java.util.List;
import strickle.plan.Effort;

/**
 * What is asked when a plan is laid out anew.
 *
 * @param now the moment before which nothing new starts
 * @param frozenUntil tasks of the present plan that start before this keep their person and time
 *     unless that has become impossible
 * @param happened what has happened, in any order
 * @param effort how long to search
 * @param seed where the search's chance begins
 */
public record ReplanRequest(
    OffsetDateTime now,
    OffsetDateTime frozenUntil,
    List<Happening> happened,
    Effort effort,
    long seed) {

  /** Takes its own copy of the list. */
  public ReplanRequest {
    happened = List.copyOf(happened);
  }
}
