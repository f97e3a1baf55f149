package strickle.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Order;

/**
 * Orders read from a table.
 *
 * @param orders the good ones, in the order they first appear
 * @param leftOut ids of the orders with a bad row, as far as they have one
 * @param faults what is wrong, each with its line and column
 */
public record OrderImport(List<Order> orders, List<String> leftOut, List<Fault> faults) {

  /** Copies the lists. */
  public OrderImport {
    orders = List.copyOf(orders);
    leftOut = List.copyOf(leftOut);
    faults = List.copyOf(faults);
  }

  /**
   * The book with the good orders in it: one with an id the book has already takes the place of
   * that, the others come behind all.
   *
   * @throws strickle.book.Faulty when the book cannot have them
   */
  public Book into(Book book) {
    Map<String, Order> all = new LinkedHashMap<>();
    book.orders().forEach(order -> all.put(order.id(), order));
    orders.forEach(order -> all.put(order.id(), order));
    return book.withOrders(new ArrayList<>(all.values()));
  }

  /** How many of the good orders the book does not have yet. */
  public long added(Book book) {
    List<String> known = book.orders().stream().map(Order::id).toList();
    return orders.stream().filter(order -> !known.contains(order.id())).count();
  }

  /** How many of the good orders the book has otherwise. */
  public long changed(Book book) {
    return orders.size() - added(book) - orders.stream().filter(book.orders()::contains).count();
  }
}
