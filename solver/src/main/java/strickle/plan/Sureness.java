package strickle.plan;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;

/** How likely each order is whole when a plan says it is ready. */
public final class Sureness {

  private final Book book;
  private final Plan plan;
  private final Map<String, Ready> ready;
  private final Map<String, Long> asked = new HashMap<>();

  private Sureness(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    this.ready = plan.ready().stream().collect(Collectors.toMap(Ready::run, one -> one));
  }

  /**
   * For each order that waits for a casting, the chance from 0 to 1 that the castings ready by the
   * moment the order is, with what is on hand, bring good pieces enough for it and for all that are
   * served before it. Each piece that is not known to be lost turns out good or not by itself; an
   * order of several pieces is whole only when there are enough of all of them, so its chance is
   * the product of theirs.
   *
   * @param plan a plan of this book that the audit finds nothing in
   * @return by the order's id; an order served from stock is not in it
   */
  public static Map<String, Double> of(Book book, Plan plan) {
    Sureness sureness = new Sureness(book, plan);
    Map<String, Double> sure = new LinkedHashMap<>();
    Map<String, OrderOutcome> outcomes =
        plan.orders().stream().collect(Collectors.toMap(OrderOutcome::order, one -> one));
    for (Order order : Needs.serving(book)) {
      order.lines().forEach(line -> sureness.asked.merge(line.piece(), wanted(line), Long::sum));
      if (order.lines().stream().anyMatch(sureness::waits)) {
        sure.put(order.id(), sureness.chance(order, outcomes.get(order.id())));
      }
    }
    return sure;
  }

  private static long wanted(Line line) {
    return line.quantity();
  }

  private boolean waits(Line line) {
    return asked.get(line.piece()) > book.piece(line.piece()).onHand();
  }

  private double chance(Order order, OrderOutcome outcome) {
    return order.lines().stream()
        .map(Line::piece)
        .distinct()
        .map(book::piece)
        .mapToDouble(
            piece -> Cover.chance(piece, pieces(piece.id(), outcome), asked.get(piece.id())))
        .reduce(1, (one, other) -> one * other);
  }

  /** Pieces of a sort, good or not, that are ready when the order is; lost ones are no more. */
  private long pieces(String piece, OrderOutcome outcome) {
    return plan.lots().stream()
        .flatMap(lot -> lot.runs().stream())
        .filter(run -> run.piece().equals(piece) && !Goods.isLost(book, run))
        .filter(run -> !ready.get(run.id()).at().isAfter(outcome.ready()))
        .mapToLong(run -> Goods.pieces(book, run) - run.scrapped())
        .sum();
  }
}
