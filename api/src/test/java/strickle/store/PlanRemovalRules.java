package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import strickle.json.ItemFile;
import strickle.json.PlanFile;
import strickle.json.StudioFile;
import strickle.store.KeptPlan.State;

/** What removing plans promises, on whatever database. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
abstract class PlanRemovalRules extends PlanQueueHouse {

  @Test
  void aPlanThatIsRemovedIsNotMadeAnyMore() {
    HeldWork held = new HeldWork();
    PlanQueue queue = queue(held);
    String first = add(queue, 1);
    until(first, plan -> plan.state() == State.RUNNING);
    String second = add(queue, 2);
    String third = add(queue, 3);
    assertEquals(Plans.Removal.DONE, studio.plans().remove(second, studio.now()));
    assertEquals(Plans.Removal.NOT_THERE, studio.plans().remove(second, studio.now()));
    for (String left : List.of(first, third)) {
      until(left, plan -> plan.state() == State.RUNNING);
      studio.plans().stop(left);
      until(left, KeptPlan::isOver);
    }
    assertEquals(List.of(1L, 3L), held.seeds);
    assertEquals(List.of(third, first), all());
  }

  @Test
  void aPlanThatIsBeingLaidOutIsRemovedOnceItIsOver() {
    PlanQueue queue = queue(new HeldWork());
    String id = add(queue, 1);
    until(id, plan -> plan.state() == State.RUNNING);
    assertEquals(Plans.Removal.RUNNING, studio.plans().remove(id, studio.now()));
    assertEquals(List.of(id), all());
    studio.plans().stop(id);
    until(id, KeptPlan::isOver);
    assertEquals(Plans.Removal.DONE, studio.plans().remove(id, studio.now()));
    assertEquals(List.of(), all());
  }

  @Test
  void thePlanInUseStaysAndOfTwoThatAreTheSameOneDoes() {
    PlanQueue queue = queue(new RealWork());
    String first = done(queue, 1);
    String twin = done(queue, 1);
    String other = done(queue, 2);
    assertEquals(Optional.empty(), studio.plans().inUse(studio.now()));
    Kept now = workBy(first);
    assertEquals(Optional.of(twin), studio.plans().inUse(now));
    assertEquals(Plans.Removal.IN_USE, studio.plans().remove(twin, now));
    assertEquals(Plans.Removal.DONE, studio.plans().remove(first, now));
    assertEquals(List.of(other, twin), all());
    Kept later = workBy(other);
    assertEquals(Optional.of(other), studio.plans().inUse(later));
    assertEquals(Plans.Removal.DONE, studio.plans().remove(twin, later));
    assertEquals(List.of(other), all());
  }

  @Test
  void aPlanLaidOutAgainIsTheOneInUseWhereThatIsNotAmongThemAnyMore() {
    PlanQueue queue = queue(new RealWork());
    String first = done(queue, 1);
    String text = text(first);
    studio.plans().remove(first, studio.now());
    Kept now = workByText(text);
    assertEquals(Optional.empty(), studio.plans().inUse(now));
    String again = done(queue, 1);
    assertEquals(Optional.of(again), studio.plans().inUse(now));
    assertEquals(Plans.Removal.IN_USE, studio.plans().remove(again, now));
  }

  @Test
  void theQueueForgetsPlansThatAreOverOrGone() {
    PlanQueue queue = queue(new RealWork());
    String first = add(queue, 1);
    String second = add(queue, 2);
    studio.plans().remove(second, studio.now());
    done(queue, 3);
    until(first, KeptPlan::isOver);
    for (int i = 0; queued() > 0 && i < 500; i++) {
      pause();
    }
    assertEquals(0, queued());
  }

  private int queued() {
    return database.read(
        handle ->
            handle.createQuery("select count(*) from scheduled_tasks").mapTo(Integer.class).one());
  }

  private String done(PlanQueue queue, long seed) {
    String id = add(queue, seed);
    until(id, KeptPlan::isOver);
    return id;
  }

  private Kept workBy(String plan) {
    return workByText(text(plan));
  }

  private String text(String plan) {
    return ItemFile.compact(PlanFile.write(studio.plans().result(plan).orElseThrow()));
  }

  private Kept workByText(String body) {
    return studio.change(
        new By("maren", "a plan accepted"),
        kept -> kept.entries().with(StudioFile.PLAN_IN_USE, StudioFile.CURRENT, body));
  }

  private List<String> all() {
    return studio.plans().list(Optional.empty(), 9).stream().map(KeptPlan::id).toList();
  }
}
