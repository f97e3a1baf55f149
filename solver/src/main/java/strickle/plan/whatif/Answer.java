package strickle.plan.whatif;

import java.util.List;
import java.util.Objects;
import strickle.plan.Plan;

/**
 * What would happen with each change that was tried.
 *
 * @param present the present plan
 * @param alone the best plan found for the unchanged book with the same effort as for each change;
 *     what a change is credited with is what it brings beyond that
 * @param tried each change with what came of it, the most helpful first; of those that help alike
 *     the cheapest, those whose cost is not known last
 */
public record Answer(Plan present, Plan alone, List<Tried> tried) {

  /** Copies the list. */
  public Answer {
    Objects.requireNonNull(present, "present");
    Objects.requireNonNull(alone, "alone");
    tried = List.copyOf(tried);
  }
}
