package strickle.plan;

import java.util.Optional;
import java.util.function.Predicate;

/**
 * A way to read what of a plan under way is to stay.
 *
 * @param wanted which tasks of the present plan are to stay where they are, if they can
 * @param pushed where they have been pushed to, in place of where they are planned
 * @param notBefore whether what does not stay may start no earlier than it was planned
 * @param begin the plan that the search begins from, in place of the present one
 */
record Reading(
    Predicate<Task> wanted, Optional<Pushing> pushed, boolean notBefore, Optional<Plan> begin) {

  /** Those tasks stay where they are. */
  static Reading of(Predicate<Task> wanted) {
    return new Reading(wanted, Optional.empty(), false, Optional.empty());
  }

  boolean isWanted(Task task) {
    return wanted.test(task) && pushed.map(pushing -> !pushing.isOut(task)).orElse(true);
  }

  Reading pushedBy(Pushing pushing) {
    return new Reading(wanted, Optional.of(pushing), notBefore, begin);
  }

  Reading noEarlier() {
    return new Reading(wanted, pushed, true, begin);
  }

  Reading from(RestPlan other) {
    return new Reading(wanted, pushed, notBefore, Optional.of(other.plan()));
  }
}
