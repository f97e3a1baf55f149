package strickle.plan.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.SampleBook;
import strickle.book.Window;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Why;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;

/** Altered sample books: no explanation fails, and no promise is made that cannot be kept. */
class PromiseTest {

  private static final int BOOKS = 50;

  private int late;
  private int promises;
  private int several;

  @Test
  void whatIsSaidToFreeAnOrderIsAPlanTheAuditFindsNothingIn() {
    for (int number = 0; number < BOOKS; number++) {
      Book book = AlteredStudios.book(number);
      Optional<Plan> plan = Floors.plan(book);
      if (plan.isPresent()) {
        book.orders().forEach(order -> keepsItsPromises(book, plan.get(), order));
      }
    }
    assertTrue(late > 60, () -> "too few late orders to tell: " + late);
    assertTrue(several > 5, () -> "too few changes together to tell: " + several);
    assertTrue(promises > 50, () -> "too few promises to tell: " + promises);
  }

  private void keepsItsPromises(Book book, Plan plan, Order order) {
    List<String> because = Why.of(book, plan, order.id());
    OrderOutcome planned = outcome(plan, order);
    assertEquals(planned.because(), because);
    if (planned.lateMinutes() == 0) {
      assertEquals(List.of(), because);
      return;
    }
    late++;
    because.forEach(line -> assertFalse(line.contains("null") || line.endsWith("."), line));
    assertTrue(because.size() >= 2 && because.size() <= 7, () -> order.id() + " " + because);
    Floor floor = Floors.of(book, plan);
    if (Serving.of(floor).of(order.id()).last().isPresent()) {
      Freeing freeing = new Freeing(floor, order, 15);
      List<Freeing.Freed> ways = new ArrayList<>(freeing.ways());
      ways.add(freeing.again());
      ways.forEach(way -> assertKept(book, plan, order, way));
      freeing.ways().forEach(way -> assertNothingNeedless(freeing, way));
    }
  }

  private void assertKept(Book book, Plan plan, Order order, Freeing.Freed way) {
    promises++;
    Moments moments = way.floor().moments();
    Book granted = Granted.book(book, moments, way.reliefs());
    Plan promised = Promised.plan(granted, plan, way.floor());
    List<Finding> findings = Audit.of(granted, promised);
    assertEquals(
        List.of(), findings, () -> order.id() + " with " + way.reliefs() + ": " + findings);
    assertEquals(way.ready(), moments.minute(outcome(promised, order).ready()));
  }

  /** Of several changes together none does it without the others. */
  private void assertNothingNeedless(Freeing freeing, Freeing.Freed way) {
    for (Relief relief : way.reliefs()) {
      List<Relief> others = way.reliefs().stream().filter(one -> !one.equals(relief)).toList();
      if (!others.isEmpty()) {
        several++;
        boolean enough =
            freeing.tryOut(others).filter(fewer -> freeing.isAsGood(fewer, way)).isPresent();
        assertFalse(enough, () -> "not needed for it: " + relief + " of " + way.reliefs());
      }
    }
  }

  @Test
  void anOrderWithoutWeightIsOfferedNothing() {
    int seen = 0;
    for (int number = 0; number < BOOKS; number++) {
      Book book = AlteredStudios.book(number);
      Optional<Plan> plan = Floors.plan(book);
      for (OrderOutcome outcome : plan.map(Plan::orders).orElse(List.of())) {
        boolean counts = book.order(outcome.order()).weight().signum() > 0;
        if (!counts && outcome.lateMinutes() > 0) {
          seen++;
          Plan found = plan.get();
          assertTrue(
              Why.remedies(book, found).stream()
                  .noneMatch(one -> one.order().equals(outcome.order())));
          assertFalse(outcome.because().getLast().contains("would"), outcome.because().toString());
        }
      }
    }
    assertTrue(seen > 5, "too few late orders without weight: " + seen);
  }

  @Test
  void anOrderServedBeforeItsEldersIsReadyWhenItIsSaidToBe() {
    int swaps = 0;
    for (int number = 0; number < BOOKS; number++) {
      Book book = AlteredStudios.book(number);
      Optional<Plan> plan = Floors.plan(book);
      for (Order order : plan.isPresent() ? book.orders() : List.<Order>of()) {
        Serving.Service service = Serving.of(Floors.of(book, plan.get())).of(order.id());
        if (!service.elders().isEmpty()) {
          Book swapped = withEldersLater(book, service);
          Plan same = Promised.plan(swapped, plan.get(), Floors.of(swapped, plan.get()));
          assertEquals(List.of(), Audit.of(swapped, same));
          Moments moments = Floors.of(book, same).moments();
          assertEquals(service.first(), moments.minute(outcome(same, order).ready()));
          swaps++;
        }
      }
    }
    assertTrue(swaps > 10, "too few orders with elders: " + swaps);
  }

  @Test
  void aPlanOlderThanTheHoursInTheBookIsStillExplained() {
    int explained = 0;
    for (int number = 0; number < BOOKS; number++) {
      Book book = AlteredStudios.book(number);
      Optional<Plan> plan = Floors.plan(book);
      Book since = Altered.of(book, "people", book.people().stream().map(this::onSundays).toList());
      for (Order order : plan.isPresent() ? book.orders() : List.<Order>of()) {
        int lines = Why.of(since, plan.get(), order.id()).size();
        assertTrue(lines != 1 && lines <= 7, () -> order.id() + " has " + lines + " lines");
        explained += lines > 0 ? 1 : 0;
      }
    }
    assertTrue(explained > 50, "too few late orders to tell: " + explained);
  }

  private Person onSundays(Person person) {
    Map<DayOfWeek, List<Window>> hours = Map.of(DayOfWeek.SUNDAY, List.of(SampleBook.hours(9, 10)));
    return Altered.of(person, "hours", hours);
  }

  private static Book withEldersLater(Book book, Serving.Service service) {
    List<Order> orders =
        book.orders().stream()
            .map(
                one ->
                    service.elders().contains(one)
                        ? Altered.of(one, "due", service.order().due().plusDays(1))
                        : one)
            .toList();
    return Altered.of(book, "orders", orders);
  }

  private static OrderOutcome outcome(Plan plan, Order order) {
    return plan.orders().stream()
        .filter(one -> one.order().equals(order.id()))
        .findFirst()
        .orElseThrow();
  }
}
