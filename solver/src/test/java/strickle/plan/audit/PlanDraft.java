package strickle.plan.audit;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import strickle.book.Altered;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;

/** A plan in the making: a test alters what it is about and, if need be, settles what follows. */
final class PlanDraft {

  private Plan plan;

  private PlanDraft(Plan plan) {
    this.plan = plan;
  }

  static PlanDraft of(Plan plan) {
    return new PlanDraft(plan);
  }

  Plan plan() {
    return plan;
  }

  /** Another value for a component of the plan. */
  PlanDraft with(String component, Object value) {
    plan = Altered.of(plan, component, value);
    return this;
  }

  /** Another value for a component of the totals. */
  PlanDraft total(String component, Object value) {
    return with("totals", Altered.of(plan.totals(), component, value));
  }

  PlanDraft task(String id, UnaryOperator<Task> change) {
    return with("tasks", changed(plan.tasks(), task -> task.id().equals(id), change));
  }

  PlanDraft spells(String id, Spell... spells) {
    return task(id, task -> Altered.of(task, "spells", List.of(spells)));
  }

  PlanDraft person(String id, String person) {
    return task(id, task -> Altered.of(task, "person", person));
  }

  PlanDraft withoutTask(String id) {
    return with("tasks", plan.tasks().stream().filter(task -> !task.id().equals(id)).toList());
  }

  PlanDraft plusTask(Task task) {
    return with("tasks", plus(plan.tasks(), task));
  }

  PlanDraft lot(String id, UnaryOperator<Lot> change) {
    return with("lots", changed(plan.lots(), lot -> lot.id().equals(id), change));
  }

  PlanDraft plusLot(Lot lot) {
    return with("lots", plus(plan.lots(), lot));
  }

  PlanDraft withoutLot(String id) {
    return with("lots", plan.lots().stream().filter(lot -> !lot.id().equals(id)).toList());
  }

  /** Changes the one run of a lot. */
  PlanDraft run(String lot, UnaryOperator<Run> change) {
    return lot(lot, l -> Altered.of(l, "runs", l.runs().stream().map(change).toList()));
  }

  /** Another value for a component of the only order. */
  PlanDraft order(String component, Object value) {
    return with("orders", changed(plan.orders(), o -> true, o -> Altered.of(o, component, value)));
  }

  /** Another moment at which a run is listed as ready. */
  PlanDraft ready(String run, OffsetDateTime at) {
    return with(
        "ready", changed(plan.ready(), r -> r.run().equals(run), r -> Altered.of(r, "at", at)));
  }

  /** What follows from the tasks, worked out with the sample's waits. */
  PlanDraft settled() {
    return settled(Follow.SAMPLE);
  }

  PlanDraft settled(Follow follow) {
    plan = follow.settle(plan);
    return this;
  }

  static <T> List<T> plus(List<T> list, T more) {
    List<T> longer = new ArrayList<>(list);
    longer.add(more);
    return longer;
  }

  private static <T> List<T> changed(List<T> list, Predicate<T> which, UnaryOperator<T> change) {
    return list.stream().map(item -> which.test(item) ? change.apply(item) : item).toList();
  }
}
