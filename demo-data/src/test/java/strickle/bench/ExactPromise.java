package strickle.bench;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Order;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Served;
import strickle.plan.promise.Offer;

/**
 * The earliest date there is for a new order on a small week, by the exact model: as long as a plan
 * is found in which the order, due a minute sooner, is on time, there is an earlier one.
 */
final class ExactPromise {

  private ExactPromise() {}

  /**
   * What was found.
   *
   * @param ready the earliest date found
   * @param proved whether there is none a minute earlier
   */
  record Earliest(OffsetDateTime ready, boolean proved) {}

  /**
   * The book with every order due when the plan has it ready, if that is later, and of weight 1.
   */
  static Book onTime(Book book, Plan plan) {
    Map<String, OffsetDateTime> ready = new HashMap<>();
    plan.orders().forEach(one -> ready.put(one.order(), one.ready()));
    List<Order> orders = new ArrayList<>();
    for (Order order : book.orders()) {
      var at = ready.get(order.id()).toLocalDateTime();
      var due = at.isAfter(order.due()) ? at : order.due();
      orders.add(
          new Order(order.id(), order.buyer(), order.kind(), due, BigDecimal.ONE, order.lines()));
    }
    return book.withOrders(orders);
  }

  /**
   * Looks for an earlier date than an offer's that makes nobody late.
   *
   * @param offer one on a plan without late orders
   */
  static Earliest kept(Offer offer, Duration limit) {
    return earlier(offer, limit, BigDecimal.ONE);
  }

  /** Looks for an earlier date than an offer's, whoever is late. */
  static Earliest pressed(Offer offer, Duration limit) {
    return earlier(offer, limit, BigDecimal.ZERO);
  }

  private static Earliest earlier(Offer offer, Duration limit, BigDecimal othersWeight) {
    String own = offer.book().orders().getLast().id();
    OffsetDateTime best = offer.ready();
    Plan plan = offer.plan();
    while (best.isAfter(plan.from())) {
      Book sooner = due(offer.book(), best.minusMinutes(1), othersWeight);
      Plan hint = Served.of(sooner, plan).plan();
      ExactWeek.Result result = ExactWeek.solve(sooner, plan.from(), hint, limit);
      if (result.lateHours().signum() > 0) {
        return new Earliest(best, result.lateHoursAtLeast().signum() > 0);
      }
      plan = result.plan();
      best = ready(plan, own);
    }
    return new Earliest(best, true);
  }

  private static OffsetDateTime ready(Plan plan, String order) {
    return plan.orders().stream()
        .filter(outcome -> outcome.order().equals(order))
        .map(OrderOutcome::ready)
        .findFirst()
        .orElseThrow();
  }

  /** The book with its last order, the new one, due at a moment. */
  private static Book due(Book book, OffsetDateTime moment, BigDecimal othersWeight) {
    List<Order> orders = new ArrayList<>();
    for (Order order : book.orders()) {
      boolean own = order.equals(book.orders().getLast());
      orders.add(
          new Order(
              order.id(),
              order.buyer(),
              order.kind(),
              own ? moment.toLocalDateTime() : order.due(),
              own ? BigDecimal.ONE : othersWeight,
              order.lines()));
    }
    return book.withOrders(orders);
  }
}
