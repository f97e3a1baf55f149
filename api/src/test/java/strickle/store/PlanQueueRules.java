package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BookParts;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.store.KeptPlan.State;

/** What the queue of plans promises, on whatever database. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
abstract class PlanQueueRules extends PlanQueueHouse {

  @Test
  void aPlanIsMadeOfTheBookAsItWasWhenItWasAskedFor() {
    String id = ask(0);
    studio.change(
        new By("maren", "no orders"),
        kept -> {
          Entries entries = kept.entries();
          for (Entry order : entries.list("orders")) {
            entries = entries.without("orders", order.id());
          }
          return entries;
        });
    queue(new RealWork());
    KeptPlan plan = until(id, KeptPlan::isOver);
    assertEquals(State.DONE, plan.state(), plan.toString());
    Plan made = Planning.of(BOOK, RealWork.request(plan.asked()), better -> {}).run();
    assertEquals(Optional.of(made), studio.plans().result(id));
    assertEquals(Optional.of(made.totals()), plan.totals());
    assertEquals(Optional.of(BOOK), studio.plans().book(id));
    assertTrue(plan.progress().orElseThrow().schedules() > 0);
  }

  @Test
  void plansAreMadeInTurnOneAtATime() {
    HeldWork held = new HeldWork();
    PlanQueue queue = queue(held);
    List<String> ids = List.of(add(queue, 1), add(queue, 2), add(queue, 3));
    until(ids.get(0), plan -> plan.state() == State.RUNNING);
    assertEquals(State.WAITING, found(ids.get(1)).state());
    ids.forEach(
        id -> {
          until(id, plan -> plan.state() == State.RUNNING);
          studio.plans().stop(id);
          until(id, KeptPlan::isOver);
        });
    assertEquals(1, held.mostAtOnce);
    assertEquals(List.of(1L, 2L, 3L), held.seeds);
  }

  @Test
  void aStoppedPlanKeepsItsBestAndOneThatWaitedIsOverAtOnce() {
    PlanQueue queue = queue(new HeldWork());
    String first = add(queue, 1);
    String second = add(queue, 2);
    until(first, plan -> plan.state() == State.RUNNING);
    assertEquals(State.STOPPED, studio.plans().stop(second).orElseThrow().state());
    studio.plans().stop(first);
    assertEquals(State.STOPPED, until(first, KeptPlan::isOver).state());
    assertTrue(studio.plans().result(first).isPresent());
    assertEquals(Optional.empty(), studio.plans().result(second));
    assertTrue(found(second).why().isPresent());
  }

  @Test
  void whatCannotBePlannedFailsAndSaysWhy() {
    Faulty faulty = new Faulty(List.of(new Fault("$.people", "none", "somebody")));
    String id =
        add(
            queue(
                (job, listener) -> {
                  throw faulty;
                }),
            1);
    KeptPlan plan = until(id, KeptPlan::isOver);
    assertEquals(State.FAILED, plan.state());
    assertTrue(plan.why().orElseThrow().contains("$.people"), plan.toString());
  }

  @Test
  void aPlanThatWasBeingMadeWhenTheProcessEndedIsMadeByTheNext() {
    HeldWork held = new HeldWork();
    PlanQueue first = queue(held);
    String running = add(first, 1);
    String waiting = add(first, 2);
    until(running, plan -> plan.state() == State.RUNNING);
    first.close();
    assertEquals(State.WAITING, found(running).state());
    queue(new RealWork());
    assertEquals(State.DONE, until(running, KeptPlan::isOver).state());
    assertEquals(State.DONE, until(waiting, KeptPlan::isOver).state());
  }

  @Test
  void noMoreWaitThanMayAndTheSameAskedTwiceIsOnePlan()
      throws ExecutionException, InterruptedException {
    Set<String> made = new HashSet<>();
    try (ExecutorService people = Executors.newFixedThreadPool(8)) {
      List<Future<String>> asked =
          IntStream.range(0, 60)
              .mapToObj(i -> people.submit(() -> ask(once("k" + i / 4), 1)))
              .toList();
      for (Future<String> one : asked) {
        made.add(one.get());
      }
    }
    assertEquals(15, made.size());
    IntStream.range(0, 5).forEach(i -> ask(i));
    assertThrows(QueueFull.class, () -> ask(9));
    assertEquals(Plans.MOST_WAITING, studio.plans().list(Optional.empty(), 99).size());
    assertTrue(made.contains(ask(once("k3"), 1)));
    assertThrows(KeyReused.class, () -> ask(Optional.of(new Once("k3", "other")), 1));
  }

  @Test
  void theListIsNewestFirstAndGoesOnAfterAnyPlan() {
    List<String> ids = List.of(ask(1), ask(2), ask(3));
    List<KeptPlan> first = studio.plans().list(Optional.empty(), 2);
    assertEquals(List.of(ids.get(2), ids.get(1)), first.stream().map(KeptPlan::id).toList());
    List<KeptPlan> rest = studio.plans().list(Optional.of(ids.get(1)), 2);
    assertEquals(List.of(ids.get(0)), rest.stream().map(KeptPlan::id).toList());
  }

  @Test
  void plansOfOneStudioAreNotSeenInAnother() {
    StudioStore other =
        new Studios(database, clock).create("Birch Yard", Optional.empty(), BookParts.of(BOOK));
    String id = ask(1);
    assertEquals(Optional.empty(), other.plans().find(id));
    assertEquals(Optional.empty(), other.plans().book(id));
    assertEquals(Optional.empty(), other.plans().result(id));
    assertEquals(Optional.empty(), other.plans().stop(id));
    assertEquals(List.of(), other.plans().list(Optional.empty(), 9));
    assertEquals(Plans.Removal.NOT_THERE, other.plans().remove(id, other.now()));
    assertEquals(State.WAITING, found(id).state());
  }
}
