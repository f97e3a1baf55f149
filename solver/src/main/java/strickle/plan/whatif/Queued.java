package strickle.plan.whatif;

import java.util.List;
import strickle.plan.Task;

/**
 * A task that waited for somebody, or could have: from a minute on nothing but people and what else
 * is to be done kept it. Minutes are those of the epoch.
 *
 * @param task the task
 * @param allowed when its forms were free, the task before it done and its wait over
 * @param start when it begins in the plan
 * @param by ids of who may do it; empty when anybody may
 * @param pressing whether a late order waits for it
 */
record Queued(Task task, long allowed, long start, List<String> by, boolean pressing) {

  /** Whether anybody may do it, a helper too. */
  boolean forAnybody() {
    return by.isEmpty();
  }

  /** Whether this person may do it. */
  boolean mayBeDoneBy(String person) {
    return forAnybody() || by.contains(person);
  }

  /** How much earlier it begins when it begins then at the earliest; 0 when it is no earlier. */
  long savedFrom(long minute) {
    return Math.max(0, start - Math.max(allowed, minute));
  }
}
