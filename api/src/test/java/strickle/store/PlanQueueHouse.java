package strickle.store;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import strickle.book.Book;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;

/** A studio with queues of plans, for tests on whatever database. */
abstract class PlanQueueHouse {

  static final Book BOOK = Demo.book(Size.SMALL);
  static final PlanQueue.Pace QUICK =
      new PlanQueue.Pace(Duration.ofMillis(100), Duration.ofMillis(250));

  final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));
  final List<PlanQueue> queues = new ArrayList<>();
  Database database;
  StudioStore studio;

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

  PlanQueue queue(PlanWork work) {
    PlanQueue queue = PlanQueue.start(database, clock, work, QUICK);
    queues.add(queue);
    return queue;
  }

  String add(PlanQueue queue, long seed) {
    String id = ask(seed);
    queue.add(studio.studio().id(), id);
    return id;
  }

  String ask(long seed) {
    return ask(Optional.empty(), seed);
  }

  static Optional<Once> once(String key) {
    return Optional.of(new Once(key, "hash"));
  }

  String ask(Optional<Once> once, long seed) {
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

  KeptPlan found(String id) {
    return studio.plans().find(id).orElseThrow();
  }

  KeptPlan until(String id, Predicate<KeptPlan> enough) {
    KeptPlan plan = found(id);
    while (!enough.test(plan)) {
      pause();
      plan = found(id);
    }
    return plan;
  }

  static void pause() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(ended);
    }
  }
}
