package strickle.price.fair;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Demand;
import strickle.book.Fair;
import strickle.book.Line;
import strickle.book.Order;

/**
 * What is to be brought to a fair, as orders of the book: one for each piece, of the kind "fair",
 * for the fair by name, due when it opens. Orders of that kind for that name are the fair's own and
 * give way to a new build.
 */
final class FairOrders {

  private static final String KIND = "fair";
  private static final int LONGEST_ID = 64;

  private FairOrders() {}

  /** The book without what was to be brought so far. */
  static Book without(Book book, Fair fair) {
    return book.withOrders(book.orders().stream().filter(order -> !isOf(order, fair)).toList());
  }

  /** The book with so many of each piece to be brought, in place of what was so far. */
  static Book with(Book book, Fair fair, Map<String, Integer> build) {
    List<Order> orders = new ArrayList<>(without(book, fair).orders());
    Set<String> taken = new HashSet<>(orders.stream().map(Order::id).toList());
    for (Demand demand : fair.demand()) {
      int pieces = build.getOrDefault(demand.piece(), 0);
      if (pieces > 0) {
        String id = freeId(fair, demand, taken);
        taken.add(id);
        orders.add(order(id, fair, demand, pieces));
      }
    }
    return book.withOrders(orders);
  }

  /** The fair's own orders. */
  static List<Order> own(Book book, Fair fair) {
    return book.orders().stream().filter(order -> isOf(order, fair)).toList();
  }

  /** The piece of each of the fair's own orders, by the order's id. */
  static Optional<String> piece(Book book, Fair fair, String order) {
    return Optional.of(book.order(order))
        .filter(one -> isOf(one, fair))
        .map(one -> one.lines().get(0).piece());
  }

  private static boolean isOf(Order order, Fair fair) {
    return order.kind().equals(KIND) && order.buyer().equals(fair.name());
  }

  private static Order order(String id, Fair fair, Demand demand, int pieces) {
    Line line = new Line(demand.piece(), pieces, demand.price());
    return new Order(id, fair.name(), KIND, fair.opens(), BigDecimal.ONE, List.of(line));
  }

  private static String freeId(Fair fair, Demand demand, Set<String> taken) {
    String wanted = fair.id() + "-" + demand.piece();
    String id = wanted.length() > LONGEST_ID ? fair.id() : wanted;
    String first = id.length() > LONGEST_ID - 4 ? KIND : id;
    for (int number = 2; taken.contains(id) || id.length() > LONGEST_ID; number++) {
      id = first + "-" + number;
    }
    return id;
  }
}
