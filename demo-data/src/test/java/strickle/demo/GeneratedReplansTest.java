package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Replanning;
import strickle.plan.Task;
import strickle.plan.audit.Audit;
import strickle.plan.replan.Happening;
import strickle.plan.replan.Move;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.plan.replan.Thawed;

/** Plans of generated books, laid out anew in the middle of made-up afternoons. */
class GeneratedReplansTest {

  private final List<String> wrong = new ArrayList<>();
  private int replanned;
  private int told;

  private static Plan plan(Book book, long seed) {
    OffsetDateTime from = Generator.start(book);
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(40), seed);
    return Planning.of(book, request, progress -> {}).run();
  }

  @Test
  void whateverHappensThePlanIsValidAndKeepsIt() {
    for (int i = 0; i < 150; i++) {
      threeInARow(6 + i % 25, 6000 + i, i % 3 == 0 ? 0 : 60);
    }
    assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong\n" + String.join("\n", wrong));
    assertTrue(replanned > 300 && told > 2000, replanned + " replanned, " + told + " told");
  }

  @Test
  @Tag("long")
  void soItIsInLargerStudios() {
    for (int i = 0; i < 20; i++) {
      threeInARow(40 + 4 * i, 7000 + i, 60);
    }
    assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong\n" + String.join("\n", wrong));
  }

  @Test
  void whereNothingHasHappenedNothingMoves() {
    for (int i = 0; i < 60; i++) {
      Book book = Generator.book(6 + i % 25, 8000 + i);
      Plan plan = plan(book, i);
      ReplanRequest request =
          new ReplanRequest(plan.from(), plan.from(), List.of(), Effort.ofSchedules(40), i);
      Replanned again = Replanning.of(book, plan, request).run();
      assertEquals(Set.copyOf(plan.tasks()), Set.copyOf(again.plan().tasks()));
      assertEquals(plan.lots(), again.plan().lots());
      assertEquals(0, again.moved());
      assertEquals(List.of(), again.orders());
    }
  }

  private void threeInARow(int castings, long seed, int trouble) {
    Book book = Generator.book(castings, seed);
    Random random = new Random(seed);
    Plan plan = plan(book, seed);
    OffsetDateTime now = plan.from();
    for (int time = 0; time < 3; time++) {
      now = Afternoon.moment(plan, now, random);
      String name = castings + " castings, seed " + seed + ", time " + time + ": ";
      List<Happening> happened = Afternoon.of(book, plan, now, trouble, random);
      try {
        plan = replan(name, book, plan, now, happened, seed);
      } catch (Faulty refused) {
        boolean known = refused.faults().stream().allMatch(GeneratedReplansTest::isOfTheBook);
        if (!known) {
          wrong.add(name + refused.getMessage());
        }
        return;
      }
    }
  }

  private static boolean isOfTheBook(Fault fault) {
    return fault.path().startsWith("$.forms");
  }

  private Plan replan(
      String name, Book book, Plan plan, OffsetDateTime now, List<Happening> all, long seed) {
    List<Happening> happened = new ArrayList<>(all);
    while (true) {
      ReplanRequest request =
          new ReplanRequest(now, now.plusHours(8), happened, Effort.ofSchedules(60), seed);
      Replanning replanning;
      try {
        replanning = Replanning.of(book, plan, request);
      } catch (Faulty refused) {
        if (!forget(refused, happened)) {
          throw refused;
        }
        continue;
      }
      Replanned again = replanning.run();
      replanned++;
      told += happened.size();
      check(name, book, request, again);
      return again.plan();
    }
  }

  /** Forgets what cannot have happened, for want of forms or places, or behind what has not. */
  private static boolean forget(Faulty refused, List<Happening> happened) {
    List<Integer> places =
        refused.faults().stream()
            .filter(fault -> fault.path().startsWith("$.happened["))
            .map(fault -> fault.path().replaceAll("^[^\\[]*\\[([0-9]+)\\].*$", "$1"))
            .map(Integer::valueOf)
            .distinct()
            .sorted()
            .toList();
    for (int i = places.size() - 1; i >= 0; i--) {
      happened.remove(places.get(i).intValue());
    }
    return !places.isEmpty();
  }

  private void check(String name, Book book, ReplanRequest request, Replanned again) {
    Plan plan = again.plan();
    Audit.of(book, plan).forEach(finding -> wrong.add(name + finding));
    request.happened().stream()
        .filter(Happening::isTask)
        .filter(one -> plan.tasks().stream().noneMatch(task -> isAsTold(one, task)))
        .forEach(one -> wrong.add(name + "not as told: " + one));
    Set<String> thawed = again.thawed().stream().map(Thawed::task).collect(Collectors.toSet());
    for (Move move : again.moves()) {
      boolean frozen =
          move.before()
              .filter(slot -> !slot.start().isBefore(request.now()))
              .filter(slot -> slot.start().isBefore(request.frozenUntil()))
              .isPresent();
      if (frozen && move.change().isMove() && !thawed.contains(move.task())) {
        wrong.add(name + "moved without a word: " + move);
      }
    }
    ReplanRequest nothingNew =
        new ReplanRequest(
            request.now(), request.now(), List.of(), Effort.ofSchedules(20), request.seed());
    Replanned third = Replanning.of(book, plan, nothingNew).run();
    if (third.moved() > 0) {
      wrong.add(
          name
              + "moves though nothing new has happened: "
              + third.moves().stream().filter(m -> m.change().isMove()).toList());
    }
  }

  private static boolean isAsTold(Happening one, Task task) {
    return task.id().equals(one.task())
        && task.person().equals(one.person().orElseThrow())
        && task.start().toLocalDateTime().equals(one.start().orElseThrow())
        && task.done() == one.end().isPresent()
        && one.end().map(end -> task.end().toLocalDateTime().equals(end)).orElse(task.begun());
  }
}
