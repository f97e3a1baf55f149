package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;
import strickle.json.ItemFile;
import strickle.json.PlanFile;
import strickle.json.StudioFile;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.store.KeptPlan.State;

/** What the queue of plans promises, on whatever database. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
abstract class PlanQueueRules {

  private static final Book BOOK = Demo.book(Size.SMALL);
  private static final PlanQueue.Pace QUICK =
      new PlanQueue.Pace(Duration.ofMillis(100), Duration.ofMillis(250));

  private final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));
  private final List<PlanQueue> queues = new ArrayList<>();
  private Database database;
  private StudioStore studio;

  /** A new, empty database. */
  abstract Database fresh();

  @BeforeEach
  void open() {
    database = fresh();
    studio = new Studios(database, clock).create("Ash Lane", Optional.empty(), BookParts.of(BOOK));
  }

  @AfterEach
  void close() {
    queues.forEach(PlanQueue::close);
    database.close();
  }

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

  private PlanQueue queue(PlanWork work) {
    PlanQueue queue = PlanQueue.start(database, clock, work, QUICK);
    queues.add(queue);
    return queue;
  }

  private String add(PlanQueue queue, long seed) {
    String id = ask(seed);
    queue.add(studio.studio().id(), id);
    return id;
  }

  private String ask(long seed) {
    return ask(Optional.empty(), seed);
  }

  private static Optional<Once> once(String key) {
    return Optional.of(new Once(key, "hash"));
  }

  private String ask(Optional<Once> once, long seed) {
    PlanAsked asked =
        new PlanAsked(
            Demo.start(),
            OptionalLong.empty(),
            OptionalLong.of(200),
            seed,
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());
    return studio.plans().ask("maren", once, asked, studio.now(), Optional.empty());
  }

  private KeptPlan found(String id) {
    return studio.plans().find(id).orElseThrow();
  }

  private KeptPlan until(String id, Predicate<KeptPlan> enough) {
    KeptPlan plan = found(id);
    while (!enough.test(plan)) {
      pause();
      plan = found(id);
    }
    return plan;
  }

  private static void pause() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(ended);
    }
  }
}
