package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Pin;
import strickle.plan.Effort;
import strickle.plan.Lot;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.audit.Audit;

/** Plans hundreds of generated books and lets the audit read every plan. */
class GeneratedPlansTest {

  private static Plan plan(Book book, OffsetDateTime from, long schedules, long seed) {
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(schedules), seed);
    return Planning.of(book, request, progress -> {}).run();
  }

  /**
   * What is wrong with the plan of a generated book, with the castings and seed to make it again.
   */
  private static List<String> wrong(int castings, long seed, long schedules) {
    Book book = Generator.book(castings, seed);
    String name = castings + " castings, seed " + seed + ", " + schedules + " schedules: ";
    try {
      Plan plan = plan(book, Generator.start(book), schedules, seed);
      return Audit.of(book, plan).stream().map(finding -> name + finding).toList();
    } catch (Faulty refused) {
      return List.of(name + refused.getMessage());
    }
  }

  private static void assertNothingWrong(List<String> wrong) {
    assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
  }

  @Test
  void theAuditFindsNothingInPlansOfSmallBooks() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      wrong.addAll(wrong(6 + i % 25, i, 30 + i % 70));
    }
    assertNothingWrong(wrong);
  }

  @Test
  void theAuditFindsNothingInPlansWithACover() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      Book book = Generator.book(6 + i % 25, 5000 + i);
      OptionalDouble cover = OptionalDouble.of(50 + i * 49.9 / 99);
      Effort effort = Effort.ofSchedules(30);
      PlanRequest request = new PlanRequest(Generator.start(book), effort, i).covering(cover);
      Plan plan = Planning.of(book, request, progress -> {}).run();
      String name = "castings " + (6 + i % 25) + ", seed " + (5000 + i) + ", " + cover + ": ";
      Audit.of(book, plan).forEach(finding -> wrong.add(name + finding));
    }
    assertNothingWrong(wrong);
  }

  @Test
  @Tag("slow")
  void theAuditFindsNothingInPlansOfMiddlingBooks() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      wrong.addAll(wrong(31 + i % 60, 1000 + i, 60));
    }
    assertNothingWrong(wrong);
  }

  @Test
  @Tag("slow")
  void theAuditFindsNothingInPlansOfLargeBooks() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      wrong.addAll(wrong(120, 2000 + i, 30));
    }
    assertNothingWrong(wrong);
  }

  @Test
  void theFirstScheduleOfABookIsAPlanAsWell() {
    List<String> wrong = new ArrayList<>();
    IntStream.range(0, 100).forEach(i -> wrong.addAll(wrong(6 + i % 40, 3000 + i, 1)));
    assertNothingWrong(wrong);
  }

  /** What was planned once can be kept, so no pin of it may be refused. */
  @Test
  void pinsTakenFromAPlanAreKept() {
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      Dice dice = new Dice(i);
      Book book = Generator.book(6 + i % 30, 4000 + i);
      Plan plan = plan(book, Generator.start(book), 20, i);
      for (int percent : List.of(100, 40)) {
        Book pinned = pinned(book, plan, dice, percent);
        String name = "castings " + (6 + i % 30) + ", seed " + (4000 + i) + ", " + percent + " %: ";
        try {
          Plan again = plan(pinned, Generator.start(book), 10, i);
          Audit.of(pinned, again).forEach(finding -> wrong.add(name + finding));
        } catch (Faulty refused) {
          wrong.add(name + refused.getMessage());
        }
      }
    }
    assertNothingWrong(wrong);
  }

  /** The book with some of the pours of its plan pinned. */
  private static Book pinned(Book book, Plan plan, Dice dice, int percent) {
    Map<String, Task> pours = new HashMap<>();
    for (Task task : plan.tasks()) {
      if (task.kind() == TaskKind.POUR && dice.chance(percent)) {
        pours.put(task.lot(), task);
      }
    }
    List<Pin> pins = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      Task pour = pours.get(lot.id());
      for (Run run : pour == null ? List.<Run>of() : lot.runs()) {
        LocalDateTime start = pour.start().toLocalDateTime();
        // The other way round, so that the order of the plan is no help.
        pins.add(0, new Pin(Pin.POUR, run.piece(), run.castings(), start, pour.person()));
      }
    }
    return book.withPins(pins);
  }

  @ParameterizedTest
  @EnumSource
  void theDemoIsPlannedInEverySize(Size size) {
    Book book = Demo.book(size);
    Plan plan = plan(book, Demo.start(), 200, 0);
    assertEquals(List.of(), Audit.of(book, plan));
    assertEquals(book.orders().size(), plan.orders().size());
  }

  @Test
  void theLateOrderIsLateWhateverIsDoneAndSaysWhy() {
    Book book = Demo.lateBook();
    for (long seed = 0; seed < 3; seed++) {
      Plan plan = plan(book, Demo.start(), 500, seed);
      assertEquals(List.of(), Audit.of(book, plan));
      List<OrderOutcome> late =
          plan.orders().stream().filter(order -> order.lateMinutes() > 0).toList();
      assertEquals(List.of("LATE-1"), late.stream().map(OrderOutcome::order).toList());
      assertTrue(late.get(0).because().size() >= 2, late::toString);
    }
  }
}
