package strickle.plan;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strickle.plan.replan.Comparison;
import strickle.plan.replan.Move;
import strickle.shop.Schedule;

/**
 * One way to lay out the rest of a plan, and how good it is: first what exceeds a most-wait, then
 * lateness, then how much is stirred by moving, then the minutes of work and when all is ready.
 *
 * @param plan the plan
 * @param reasons why tasks that were wanted to stay could not, by task
 * @param schedule the schedule it comes from
 * @param moves what has moved
 */
record RestPlan(Plan plan, Map<String, String> reasons, Schedule schedule, List<Move> moves)
    implements Comparable<RestPlan> {

  private static final Comparator<RestPlan> LATER =
      Comparator.comparingLong(RestPlan::exceededMinutes).thenComparing(RestPlan::late);

  private static final Comparator<RestPlan> BETTER =
      LATER
          .thenComparingLong(one -> Comparison.stir(one.moves))
          .thenComparingLong(RestPlan::moved)
          .thenComparingLong(one -> one.plan.totals().attendedMinutes())
          .thenComparingLong(one -> one.schedule.value().flow());

  private long exceededMinutes() {
    return plan.history().orElseThrow().exceeded().stream()
        .mapToLong(History.Exceeded::minutes)
        .sum();
  }

  /** Started late hours, each as much as its order weighs. */
  BigDecimal late() {
    return plan.totals().weightedLateHours();
  }

  private long moved() {
    return moves.stream().filter(move -> move.change().isMove()).count();
  }

  /** How much these tasks have moved. */
  private long stir(Collection<String> tasks) {
    return Comparison.stir(moves.stream().filter(move -> tasks.contains(move.task())).toList());
  }

  /** Whether no task still to come has moved, is new or gone. */
  boolean isAsItWas() {
    return moved() == 0;
  }

  /** Whether anything is late, or waits too long. */
  boolean isLate() {
    return late().signum() > 0 || exceededMinutes() > 0;
  }

  /** Whether what exceeds a most-wait, or else what is late, is less. */
  boolean isLessLateThan(RestPlan other) {
    return LATER.compare(this, other) < 0;
  }

  /** Better first, where a task of some that moves counts as much as so many others. */
  static Comparator<RestPlan> minding(Collection<String> tasks, long each) {
    return LATER
        .thenComparingLong(one -> Comparison.stir(one.moves) + (each - 1) * one.stir(tasks))
        .thenComparing(BETTER);
  }

  /** The orders that are less late than in another plan. */
  Set<String> ordersLessLateThan(RestPlan other) {
    Map<String, Long> late = new HashMap<>();
    other.plan.orders().forEach(order -> late.put(order.order(), order.lateMinutes()));
    return plan.orders().stream()
        .filter(order -> order.lateMinutes() < late.get(order.order()))
        .map(OrderOutcome::order)
        .collect(Collectors.toSet());
  }

  RestPlan orBetter(RestPlan other) {
    return other.compareTo(this) < 0 ? other : this;
  }

  @Override
  public int compareTo(RestPlan other) {
    return BETTER.compare(this, other);
  }
}
