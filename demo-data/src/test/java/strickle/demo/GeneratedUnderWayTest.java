package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Replanning;
import strickle.plan.Task;
import strickle.plan.audit.Audit;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.PromiseRequest;
import strickle.plan.promise.Promising;
import strickle.plan.replan.Happening;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.whatif.Answer;
import strickle.plan.whatif.Change;
import strickle.plan.whatif.Helper;
import strickle.plan.whatif.Ideas;
import strickle.plan.whatif.WhatIf;

/** What is asked of plans of generated books in the middle of made-up afternoons. */
class GeneratedUnderWayTest {

  private static final int MOST_IDEAS = 4;

  private static Plan underWay(Book book, long seed) {
    Random random = new Random(seed);
    PlanRequest request = new PlanRequest(Generator.start(book), Effort.ofSchedules(60), seed);
    Plan plan = Planning.of(book, request, progress -> {}).run();
    OffsetDateTime now = Afternoon.moment(plan, plan.from(), random);
    List<Happening> happened = new ArrayList<>(Afternoon.of(book, plan, now, 70, random));
    while (true) {
      try {
        ReplanRequest anew =
            new ReplanRequest(now, now.plusHours(8), happened, Effort.ofSchedules(60), seed);
        return Replanning.of(book, plan, anew).run().plan();
      } catch (Faulty refused) {
        forget(refused, happened);
      }
    }
  }

  private static void forget(Faulty refused, List<Happening> happened) {
    TreeSet<Integer> places = new TreeSet<>();
    for (Fault fault : refused.faults()) {
      places.add(Integer.valueOf(fault.path().replaceAll("^[^\\[]*\\[([0-9]+)\\].*$", "$1")));
    }
    places.descendingSet().forEach(place -> happened.remove(place.intValue()));
  }

  private static List<Task> history(Plan plan) {
    return plan.tasks().stream().filter(Task::isHistory).toList();
  }

  private static void assertGoesOn(Book book, Plan before, Plan plan) {
    assertEquals(List.of(), Audit.of(book, plan));
    assertEquals(List.copyOf(history(before)), history(plan));
  }

  @ParameterizedTest
  @ValueSource(longs = {301, 303, 304, 305, 306, 307, 308})
  void everyAnswerGoesOnFromWhatHasHappened(long seed) {
    Book book = Generator.book(6 + (int) (seed % 8) * 3, seed);
    Plan plan = underWay(book, seed);
    assertFalse(history(plan).isEmpty());
    assertPromises(book, plan, seed);
    assertBound(book, plan);
    assertChanges(book, plan, seed);
  }

  private static void assertPromises(Book book, Plan plan, long seed) {
    Random random = new Random(seed);
    String piece = book.pieces().get(random.nextInt(book.pieces().size())).id();
    PromiseRequest request =
        new PromiseRequest(
            piece, 1 + random.nextInt(4), Optional.empty(), OptionalLong.of(60), seed);
    Promise promise = Promising.of(book, plan, request);
    Stream.of(promise.kept(), promise.still(), promise.pressed())
        .flatMap(Optional::stream)
        .forEach(offer -> assertGoesOn(offer.book(), plan, offer.plan()));
    Offer kept = promise.kept().orElseThrow();
    assertEquals(List.of(), kept.later());
    assertFalse(kept.ready().isBefore(Planning.begins(plan)));
    Offer still = promise.still().orElse(kept);
    boolean allThere = still.plan().tasks().containsAll(plan.tasks());
    assertTrue(promise.still().isEmpty() || allThere);
  }

  private static void assertBound(Book book, Plan plan) {
    Bounds bounds = Bounding.of(book, plan);
    for (int i = 0; i < bounds.orders().size(); i++) {
      OffsetDateTime ready = plan.orders().get(i).ready();
      OffsetDateTime least = bounds.orders().get(i).served();
      assertFalse(ready.isBefore(least), bounds.orders().get(i) + ", but ready " + ready);
    }
    assertTrue(bounds.weightedLateHours().compareTo(plan.totals().weightedLateHours()) <= 0);
    assertTrue(bounds.attendedMinutes() <= plan.totals().attendedMinutes());
  }

  private static void assertChanges(Book book, Plan plan, long seed) {
    LocalDate today = Planning.begins(plan).toLocalDate();
    List<Change> changes =
        new ArrayList<>(List.of(new Helper(today.plusDays(1), Optional.empty())));
    Ideas.of(book, plan).stream().limit(MOST_IDEAS).forEach(changes::add);
    Optional<Effort> effort = Optional.of(Effort.ofSchedules(60L * changes.size()));
    Answer answer = WhatIf.of(book, plan, changes, effort, seed, done -> {}).run();
    assertGoesOn(book, plan, answer.alone());
    answer.tried().forEach(tried -> assertGoesOn(tried.book(), plan, tried.plan()));
  }
}
