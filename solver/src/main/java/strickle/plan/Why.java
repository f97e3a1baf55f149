package strickle.plan;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Person;
import strickle.plan.why.Reasons;
import strickle.plan.why.Remedy;
import strickle.shop.Calendar;

/** Says why each late order of a plan is late, and what would free it. */
public final class Why {

  /** Hours are looked at to two months after the plan's end: what is freed ends sooner. */
  private static final int BEYOND_MINUTES = 62 * 24 * 60;

  private Why() {}

  /**
   * Why an order is late: the first sentence says what is late and by how much, the next ones what
   * held it, in order of time, the last one what would free it.
   *
   * @param plan a plan of this book that the audit finds nothing in
   * @param orderId id of one of the book's orders
   * @return 2 to 7 sentences without a full stop, with names and local times; empty when the order
   *     is on time
   * @throws IllegalArgumentException when the book has no such order or the plan is not of this
   *     book
   */
  public static List<String> of(Book book, Plan plan, String orderId) {
    return reasons(book, plan).of(orderId);
  }

  /**
   * What the reasons of all late orders say would free them or bring them forward.
   *
   * @param plan a plan of this book that the audit finds nothing in
   */
  public static List<Remedy> remedies(Book book, Plan plan) {
    if (plan.orders().stream().allMatch(order -> order.lateMinutes() == 0)) {
      return List.of();
    }
    Reasons reasons = reasons(book, plan);
    return plan.orders().stream()
        .filter(order -> order.lateMinutes() > 0)
        .flatMap(order -> reasons.remedies(order.order()).stream())
        .toList();
  }

  /** The plan with the reasons of its late orders filled in anew. */
  public static Plan explained(Book book, Plan plan) {
    if (plan.orders().stream().allMatch(order -> order.lateMinutes() == 0)) {
      return plan;
    }
    Reasons reasons = reasons(book, plan);
    List<OrderOutcome> outcomes = new ArrayList<>();
    for (OrderOutcome one : plan.orders()) {
      outcomes.add(explained(one, reasons));
    }
    return plan.withOrders(outcomes);
  }

  /** What the reasons do not read as the plan does stays as it is. */
  private static OrderOutcome explained(OrderOutcome one, Reasons reasons) {
    List<String> because = one.lateMinutes() == 0 ? List.of() : one.because();
    if (one.lateMinutes() > 0 && reasons.isReady(one.order(), one.ready())) {
      because = reasons.of(one.order());
    }
    return new OrderOutcome(one.order(), one.ready(), one.lateMinutes(), because);
  }

  private static Reasons reasons(Book book, Plan plan) {
    OffsetDateTime from = first(plan);
    StudioTime time = new StudioTime(from.toInstant(), book.studio().timeZone());
    Stream<OffsetDateTime> ends =
        Stream.concat(plan.tasks().stream().map(Task::end), plan.ready().stream().map(Ready::at));
    long last = ends.mapToLong(end -> time.minute(end.toInstant())).max().orElse(0);
    Map<String, Calendar> hours = new HashMap<>();
    Book left = Absences.outOf(book, time, plan.history().map(History::away).orElse(List.of()));
    for (Person person : left.people()) {
      hours.put(person.id(), Hours.calendar(person, time, (int) last + BEYOND_MINUTES));
    }
    return new Reasons(book, plan, from, hours);
  }

  /** The plan's beginning, or the first thing that happened before. */
  private static OffsetDateTime first(Plan plan) {
    return plan.tasks().stream()
        .map(Task::start)
        .filter(start -> start.isBefore(plan.from()))
        .min(Comparator.naturalOrder())
        .orElse(plan.from());
  }
}
