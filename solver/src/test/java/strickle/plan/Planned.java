package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.plan.audit.Audit;

/** Plans books with few schedules, and lets no plan pass that the audit finds anything in. */
final class Planned {

  private static final long SCHEDULES = 60;

  private Planned() {}

  /** The plan of a book from {@link Studios#FROM}. */
  static Plan of(Book book) {
    return of(book, Studios.FROM);
  }

  static Plan of(Book book, OffsetDateTime from) {
    return of(book, from, SCHEDULES, 0);
  }

  static Plan of(Book book, OffsetDateTime from, long schedules, long seed) {
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(schedules), seed);
    Plan plan = Planning.of(book, request, progress -> {}).run();
    assertValid(book, plan);
    return plan;
  }

  static void assertValid(Book book, Plan plan) {
    assertEquals(List.of(), Audit.of(book, plan));
  }

  /** Which tasks there are, when and by whom: {@code L1/pour ana 04-05T09:00 09:35}. */
  static List<String> tasks(Plan plan) {
    return plan.tasks().stream().map(Planned::say).toList();
  }

  private static String say(Task task) {
    List<String> parts = new ArrayList<>(List.of(task.id(), task.person()));
    for (Spell spell : task.spells()) {
      parts.add(spell.start().toLocalDateTime().toString().substring(5));
      parts.add(spell.end().toLocalTime().toString());
    }
    return String.join(" ", parts);
  }
}
