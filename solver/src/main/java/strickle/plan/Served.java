package strickle.plan;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;

/**
 * What the runs of a plan come to for the orders of a book, which need not be the book it was made
 * from: the orders in the order they are served, first from stock, then from runs as they become
 * ready.
 */
public final class Served {

  private static final double TOLERANCE_PIECES = 1e-9;
  private static final long HOUR = 60;

  private record Bringing(Run run, OffsetDateTime at) {}

  private final Book book;
  private final Plan plan;
  private final StudioTime time;
  private final Needs needs;
  private final Map<String, List<Bringing>> byPiece = new HashMap<>();

  private Served(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    this.time = new StudioTime(plan.from().toInstant(), book.studio().timeZone());
    this.needs = Needs.of(book, Cover.of(plan.coverPercent()));
    Map<String, OffsetDateTime> ready = new HashMap<>();
    plan.ready().forEach(one -> ready.put(one.run(), one.at()));
    for (Lot lot : plan.lots()) {
      for (Run run : lot.runs()) {
        byPiece
            .computeIfAbsent(run.piece(), piece -> new ArrayList<>())
            .add(new Bringing(run, ready.get(run.id())));
      }
    }
    Comparator<Bringing> first = Comparator.comparing(one -> one.at().toInstant());
    byPiece.values().forEach(runs -> runs.sort(first));
  }

  /**
   * Reads a plan.
   *
   * @param plan one that makes everything the book needs
   */
  public static Served of(Book book, Plan plan) {
    return new Served(book, plan);
  }

  /** The plan with the orders and totals of the book; nothing is said yet of why any is late. */
  public Plan plan() {
    List<OrderOutcome> outcomes = outcomes();
    return new Plan(
        book.studio().name(),
        plan.from(),
        plan.seed(),
        plan.coverPercent(),
        plan.orderingFrom(),
        plan.lots(),
        plan.tasks(),
        plan.waits(),
        plan.ready(),
        outcomes,
        totals(outcomes),
        Optional.empty());
  }

  /** What becomes of each order, in the order of the book; nothing is said of why. */
  public List<OrderOutcome> outcomes() {
    return book.orders().stream().map(this::outcome).toList();
  }

  private OrderOutcome outcome(Order order) {
    OffsetDateTime ready = plan.from();
    for (Map.Entry<String, Integer> need : needs.of(order.id()).entrySet()) {
      OffsetDateTime brought = brought(need.getKey(), need.getValue());
      ready = brought.isAfter(ready) ? brought : ready;
    }
    long late = Math.max(0, time.minute(ready.toInstant()) - time.minute(order.due()));
    return new OrderOutcome(order.id(), ready, late, List.of());
  }

  /** When so many castings of a piece are ready. */
  private OffsetDateTime brought(String piece, int castings) {
    int sum = 0;
    for (Bringing one : byPiece.getOrDefault(piece, List.of())) {
      sum += one.run().castings();
      if (sum >= castings) {
        return one.at();
      }
    }
    throw new IllegalArgumentException("the plan makes " + sum + " of " + castings + " " + piece);
  }

  /** Ids of the runs that an order gets pieces of, in the order they are ready. */
  public List<String> runs(String orderId) {
    Set<String> runs = new HashSet<>();
    book.order(orderId).lines().forEach(line -> runs.addAll(bringing(orderId, line.piece())));
    return byPiece.values().stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparing((Bringing one) -> one.at().toInstant()))
        .map(one -> one.run().id())
        .filter(runs::contains)
        .toList();
  }

  private List<String> bringing(String orderId, String id) {
    Piece piece = book.piece(id);
    double from = askedBefore(orderId, id) - piece.onHand();
    int needed = needs.of(orderId).getOrDefault(id, 0);
    int castings = 0;
    double sum = 0;
    List<String> runs = new ArrayList<>();
    for (Bringing one : byPiece.getOrDefault(id, List.of())) {
      boolean enough = castings >= needed;
      castings += one.run().castings();
      sum += one.run().castings() * Cover.goodEach(book, piece);
      if (!enough && sum > from + TOLERANCE_PIECES) {
        runs.add(one.run().id());
      }
    }
    return runs;
  }

  private long askedBefore(String orderId, String piece) {
    return Needs.serving(book).stream()
        .takeWhile(order -> !order.id().equals(orderId))
        .flatMap(order -> order.lines().stream())
        .filter(line -> line.piece().equals(piece))
        .mapToLong(Line::quantity)
        .sum();
  }

  private Totals totals(List<OrderOutcome> outcomes) {
    BigDecimal late = BigDecimal.ZERO;
    for (OrderOutcome outcome : outcomes) {
      long hours = Math.ceilDiv(outcome.lateMinutes(), HOUR);
      BigDecimal weight = book.order(outcome.order()).weight();
      late = late.add(weight.multiply(BigDecimal.valueOf(hours)));
    }
    int lateOrders = (int) outcomes.stream().filter(one -> one.lateMinutes() > 0).count();
    Totals totals = plan.totals();
    return new Totals(
        late, lateOrders, totals.attendedMinutes(), totals.lots(), totals.lastReady());
  }
}
