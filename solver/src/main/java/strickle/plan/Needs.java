package strickle.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;

/**
 * How many castings a book asks for, and which order waits for how many of them. Orders are served
 * in the order of due, then larger weight, then id; first from stock, then from runs as they become
 * ready. A casting counts as the good pieces it gives on average, fractions carried, or else there
 * are as many as a {@link Cover} asks for.
 */
public final class Needs {

  private static final Comparator<Order> SERVING =
      Comparator.comparing(Order::due)
          .thenComparing(Order::weight, Comparator.reverseOrder())
          .thenComparing(Order::id);

  private final Map<String, Integer> castings = new LinkedHashMap<>();
  private final Map<String, Map<String, Integer>> byOrder = new LinkedHashMap<>();

  private Needs(Book book, Cover cover) {
    Map<String, Long> asked = new LinkedHashMap<>();
    for (Order order : serving(book)) {
      Map<String, Integer> waits = new LinkedHashMap<>();
      for (Line line : order.lines()) {
        long total = asked.merge(line.piece(), (long) line.quantity(), Long::sum);
        int needed = cover.castings(book, book.piece(line.piece()), total);
        if (needed > 0) {
          waits.put(line.piece(), needed);
          castings.merge(line.piece(), needed, Math::max);
        }
      }
      byOrder.put(order.id(), waits);
    }
  }

  /** The needs of a book, castings counted as they turn out on average. */
  public static Needs of(Book book) {
    return of(book, Cover.AVERAGE);
  }

  /** The needs of a book with so much cover against castings that do not turn out. */
  public static Needs of(Book book, Cover cover) {
    return new Needs(book, cover);
  }

  /** The book's orders in the order they are served. */
  public static List<Order> serving(Book book) {
    List<Order> orders = new ArrayList<>(book.orders());
    orders.sort(SERVING);
    return orders;
  }

  /** Castings of a piece to be planned, 0 or more. */
  public int castings(String piece) {
    return castings.getOrDefault(piece, 0);
  }

  /** All castings to be planned. */
  public long castings() {
    return castings.values().stream().mapToLong(Integer::longValue).sum();
  }

  /**
   * What an order waits for: for each piece the number of castings of it, counted as they become
   * ready, that have to be ready before the order is served; pieces served from stock are left out.
   */
  public Map<String, Integer> of(String order) {
    return byOrder.get(order);
  }
}
