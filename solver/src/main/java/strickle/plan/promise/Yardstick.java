package strickle.plan.promise;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Order;
import strickle.plan.Lot;
import strickle.plan.Needs;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Served;

/**
 * Reads off any plan that makes enough what can be promised with it. A due date decides who is
 * served before whom, so a date counts only if the new order, due on that very date, is ready.
 */
final class Yardstick {

  private final Addition addition;
  private final Plan present;
  private final OffsetDateTime begins;
  private final Served served;
  private final Map<String, OrderOutcome> before = new HashMap<>();

  /** Measures against a plan of the book without the new order. */
  Yardstick(Addition addition, Plan present) {
    this.addition = addition;
    this.present = present;
    this.begins = Planning.begins(present);
    this.served = Served.of(addition.book(), present);
    served.outcomes().forEach(outcome -> before.put(outcome.order(), outcome));
  }

  /** The plan without the new order. */
  Plan present() {
    return present;
  }

  /** The moment before which nothing new begins. */
  OffsetDateTime begins() {
    return begins;
  }

  /** When a present order is ready by the present plan, and how late. */
  OrderOutcome before(String order) {
    return before.get(order);
  }

  /** The earliest date with which no present order becomes later. */
  Optional<Offer> kept(Plan plan) {
    return dates(plan)
        .map(at -> offer(plan, at))
        .flatMap(Optional::stream)
        .filter(this::harmless)
        .findFirst();
  }

  /** The earliest date, whoever slips. */
  Optional<Offer> pressed(Plan plan) {
    return dates(plan).map(at -> offer(plan, at)).flatMap(Optional::stream).findFirst();
  }

  boolean harmless(Offer offer) {
    return offer.later().isEmpty();
  }

  /** The moments at which the new order could be ready: at once or when a run is. */
  private Stream<OffsetDateTime> dates(Plan plan) {
    Set<String> runs = new HashSet<>();
    for (Lot lot : plan.lots()) {
      lot.runs().stream()
          .filter(run -> run.piece().equals(addition.piece()))
          .map(Run::id)
          .forEach(runs::add);
    }
    Stream<OffsetDateTime> ready =
        plan.ready().stream()
            .filter(one -> runs.contains(one.run()))
            .map(Ready::at)
            .filter(begins::isBefore)
            .sorted(Comparator.comparing(OffsetDateTime::toInstant));
    return Stream.concat(Stream.of(begins), ready).distinct();
  }

  /** What comes of promising a date; nothing when the new order is not ready then. */
  Optional<Offer> offer(Plan plan, OffsetDateTime due) {
    Book book = addition.due(due);
    Served now = Served.of(book, plan);
    Plan whole = now.plan();
    OrderOutcome own =
        whole.orders().stream()
            .filter(outcome -> outcome.order().equals(addition.id()))
            .findFirst()
            .orElseThrow();
    if (own.lateMinutes() > 0) {
      return Optional.empty();
    }
    OffsetDateTime ready = own.ready().isBefore(begins) ? begins : own.ready();
    List<String> runs = now.runs(addition.id());
    return Optional.of(new Offer(ready, book, whole, runs, stock(now), slips(whole)));
  }

  private Optional<Stock> stock(Served now) {
    String piece = addition.piece();
    long taken = now.fromStock(addition.id()).getOrDefault(piece, 0L);
    if (taken == 0) {
      return Optional.empty();
    }
    List<Stock.Meant> meant = new ArrayList<>();
    for (Order order : Needs.serving(addition.book())) {
      long had = served.fromStock(order.id()).getOrDefault(piece, 0L);
      long less = had - now.fromStock(order.id()).getOrDefault(piece, 0L);
      if (less > 0) {
        meant.add(new Stock.Meant(order.id(), less, now.runs(order.id(), piece)));
      }
    }
    int onHand = addition.book().piece(piece).onHand();
    return Optional.of(new Stock((int) taken, onHand, meant));
  }

  private List<Slip> slips(Plan plan) {
    Map<String, OrderOutcome> after = new HashMap<>();
    plan.orders().forEach(outcome -> after.put(outcome.order(), outcome));
    List<Order> byDue = new ArrayList<>(addition.book().orders());
    byDue.sort(Comparator.comparing(Order::due));
    List<Slip> slips = new ArrayList<>();
    for (Order order : byDue) {
      OrderOutcome was = before.get(order.id());
      OrderOutcome is = after.get(order.id());
      if (is.ready().isAfter(was.ready())) {
        slips.add(
            new Slip(order.id(), was.ready(), is.ready(), was.lateMinutes(), is.lateMinutes()));
      }
    }
    return slips;
  }
}
