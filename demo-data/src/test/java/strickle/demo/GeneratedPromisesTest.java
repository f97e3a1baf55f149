package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Book;
import strickle.plan.Effort;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Task;
import strickle.plan.audit.Audit;
import strickle.plan.promise.Latest;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.PromiseRequest;
import strickle.plan.promise.Promising;

/**
 * What is promised on made-up weeks is true: every date is that of a plan that passes the audit.
 */
class GeneratedPromisesTest {

  private static final OptionalLong FEW = OptionalLong.of(120);

  private static Plan plan(Book book) {
    OffsetDateTime from = Generator.start(book);
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(300), 0);
    return Planning.of(book, request, progress -> {}).run();
  }

  private static PromiseRequest request(Book book, long seed, Optional<LocalDateTime> latest) {
    Random random = new Random(seed);
    String piece = book.pieces().get(random.nextInt(book.pieces().size())).id();
    return new PromiseRequest(piece, 1 + random.nextInt(6), latest, FEW, seed);
  }

  private static Stream<Offer> offers(Promise promise) {
    return Stream.of(
            promise.kept(),
            promise.still(),
            promise.pressed(),
            promise.latest().flatMap(Latest::offer))
        .flatMap(Optional::stream);
  }

  @ParameterizedTest
  @CsvSource({"4, 1", "8, 2", "12, 3", "20, 4", "30, 5", "45, 6", "60, 7"})
  void everyDateIsThatOfAPlanThatKeepsItsWord(int castings, long seed) {
    Book book = Generator.book(castings, seed);
    Plan plan = plan(book);
    LocalDateTime soon = plan.from().toLocalDateTime().plusDays(9);
    Promise promise = Promising.of(book, plan, request(book, seed, Optional.of(soon)));
    offers(promise).forEach(offer -> assertTrue(keepsItsWord(plan, promise.order(), offer)));
    promise.kept().ifPresent(offer -> assertEquals(List.of(), offer.later()));
    promise.still().ifPresent(offer -> assertEquals(List.of(), offer.later()));
    promise.pressed().ifPresent(offer -> assertFalse(offer.later().isEmpty()));
    OffsetDateTime kept = promise.kept().orElseThrow().ready();
    promise.still().ifPresent(offer -> assertTrue(kept.isBefore(offer.ready())));
    promise.pressed().ifPresent(offer -> assertTrue(offer.ready().isBefore(kept)));
    boolean inTime = !kept.toLocalDateTime().isAfter(soon);
    assertEquals(inTime, promise.latest().orElseThrow().way() == Latest.Way.KEPT);
  }

  /** The new order, due as promised, is on time, and the slips are those of the two plans. */
  private static boolean keepsItsWord(Plan before, String order, Offer offer) {
    assertEquals(List.of(), Audit.of(offer.book(), offer.plan()));
    Map<String, OrderOutcome> was = new HashMap<>();
    before.orders().forEach(outcome -> was.put(outcome.order(), outcome));
    for (OrderOutcome is : offer.plan().orders()) {
      if (is.order().equals(order)) {
        assertEquals(0, is.lateMinutes());
        assertEquals(offer.ready(), is.ready());
      } else {
        boolean told =
            offer.slips().stream()
                .anyMatch(
                    slip ->
                        slip.order().equals(is.order())
                            && slip.ready().equals(is.ready())
                            && slip.lateMinutes() == is.lateMinutes()
                            && slip.lateMinutesBefore() == was.get(is.order()).lateMinutes());
        assertEquals(is.ready().isAfter(was.get(is.order()).ready()), told, is.order());
      }
    }
    return !offer.book().order(order).due().isBefore(offer.ready().toLocalDateTime());
  }

  @ParameterizedTest
  @CsvSource({"10, 11", "25, 12", "40, 13"})
  void withNothingMovedEveryPlannedTaskIsThere(int castings, long seed) {
    Book book = Generator.book(castings, seed);
    Plan plan = plan(book);
    Promise promise = Promising.of(book, plan, request(book, seed, Optional.empty()));
    Offer still = promise.still().or(promise::kept).orElseThrow();
    List<String> tasks = still.plan().tasks().stream().map(GeneratedPromisesTest::say).toList();
    if (promise.still().isPresent()) {
      plan.tasks().forEach(task -> assertTrue(tasks.contains(say(task)), say(task)));
    }
    assertTrue(tasks.size() >= plan.tasks().size());
  }

  private static String say(Task task) {
    return task.kind() + " " + task.person() + " " + task.spells();
  }

  @ParameterizedTest
  @CsvSource({"15, 21", "50, 22"})
  void theSameSeedPromisesTheSame(int castings, long seed) {
    Book book = Generator.book(castings, seed);
    Plan plan = plan(book);
    PromiseRequest request = request(book, seed, Optional.empty());
    assertEquals(Promising.of(book, plan, request), Promising.of(book, plan, request));
  }
}
