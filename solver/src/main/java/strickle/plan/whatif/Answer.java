package strickle.plan.whatif;

import java.util.List;
import java.util.Objects;
import strickle.plan.Plan;
import strickle.plan.Totals;

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

  /**
   * The same without those changes together of which a part that was tried as well does it alone:
   * where they take lateness away, as much of it; else as much of everything.
   */
  public Answer withoutNeedless() {
    return new Answer(present, alone, tried.stream().filter(one -> !isNeedless(one)).toList());
  }

  private boolean isNeedless(Tried one) {
    return one.change() instanceof Together all
        && tried.stream()
            .filter(other -> all.changes().contains(other.change()))
            .anyMatch(part -> isAsGood(part.plan().totals(), one.plan().totals()));
  }

  private boolean isAsGood(Totals part, Totals all) {
    boolean late = all.weightedLateHours().compareTo(alone.totals().weightedLateHours()) < 0;
    return late
        ? part.weightedLateHours().compareTo(all.weightedLateHours()) <= 0
        : Tried.BY_HELP.compare(part, all) <= 0;
  }
}
