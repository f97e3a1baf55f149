package strickle.plan;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Piece;

/**
 * What the runs of a plan come to for the orders of a book, which need not be the book it was made
 * from: the orders in the order they are served, first from stock, then from runs as they become
 * ready.
 */
public final class Served {

  private static final double TOLERANCE_PIECES = 1e-9;

  private record Bringing(Run run, OffsetDateTime at) {}

  private final Book book;
  private final Plan plan;
  private final Goods goods;
  private final Goods usual;
  private final Outcomes outcomes;
  private final Map<String, List<Bringing>> byPiece = new HashMap<>();

  private Served(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    this.goods = new Goods(book, Cover.of(plan.coverPercent()));
    this.usual = new Goods(book, Cover.AVERAGE);
    this.outcomes = new Outcomes(book, goods, plan.from(), plan.lots(), plan.ready());
    Map<String, OffsetDateTime> ready = new HashMap<>();
    plan.ready().forEach(one -> ready.put(one.run(), one.at()));
    for (Lot lot : plan.lots()) {
      for (Run run : lot.runs()) {
        if (ready.containsKey(run.id())) {
          byPiece
              .computeIfAbsent(run.piece(), piece -> new ArrayList<>())
              .add(new Bringing(run, ready.get(run.id())));
        }
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

  /** The plan with the orders and totals of the book; why any is late is not said yet. */
  public Plan plan() {
    List<OrderOutcome> orders = outcomes();
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
        orders,
        outcomes.totals(orders, plan.tasks()),
        plan.history());
  }

  /** What becomes of each order, in the order of the book; why any is late is not said yet. */
  public List<OrderOutcome> outcomes() {
    return outcomes.orders(plan.history());
  }

  /** Ids of the runs that an order gets pieces of, in the order they are ready. */
  public List<String> runs(String orderId) {
    Set<String> runs = new HashSet<>();
    book.order(orderId).lines().forEach(line -> runs.addAll(runs(orderId, line.piece())));
    return byPiece.values().stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparing((Bringing one) -> one.at().toInstant()))
        .map(one -> one.run().id())
        .filter(runs::contains)
        .toList();
  }

  /** How many pieces of each kind an order gets from stock; those it gets none of are left out. */
  public Map<String, Long> fromStock(String orderId) {
    Map<String, Long> taken = new LinkedHashMap<>();
    for (Line line : book.order(orderId).lines()) {
      Piece piece = book.piece(line.piece());
      long left = Math.max(0, piece.onHand() - askedBefore(orderId, piece.id()));
      long some = Math.min(left, asked(orderId, piece.id()));
      if (some > 0) {
        taken.put(piece.id(), some);
      }
    }
    return taken;
  }

  /**
   * Ids of the runs that an order gets pieces of one sort of, first ready first: whose they are
   * goes by what runs bring on average, fractions carried.
   */
  public List<String> runs(String orderId, String id) {
    Piece piece = book.piece(id);
    long before = askedBefore(orderId, id);
    double from = before - piece.onHand();
    double needed = goods.needed(piece, before + asked(orderId, id));
    double sum = 0;
    List<String> runs = new ArrayList<>();
    List<Run> sofar = new ArrayList<>();
    for (Bringing one : byPiece.getOrDefault(id, List.of())) {
      boolean enough = goods.suffice(sofar, needed);
      sofar.add(one.run());
      sum += usual.of(one.run());
      if (!enough && sum > from + TOLERANCE_PIECES) {
        runs.add(one.run().id());
      }
    }
    return runs;
  }

  private long asked(String orderId, String piece) {
    return book.order(orderId).lines().stream()
        .filter(line -> line.piece().equals(piece))
        .mapToLong(Line::quantity)
        .sum();
  }

  private long askedBefore(String orderId, String piece) {
    return Needs.serving(book).stream()
        .takeWhile(order -> !order.id().equals(orderId))
        .flatMap(order -> order.lines().stream())
        .filter(line -> line.piece().equals(piece))
        .mapToLong(Line::quantity)
        .sum();
  }
}
