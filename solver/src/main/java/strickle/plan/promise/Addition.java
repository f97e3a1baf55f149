package strickle.plan.promise;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;

/** The new order beside those of a book; only when it is due is open. */
final class Addition {

  private static final String ID = "promise";

  private final Book book;
  private final String id;
  private final PromiseRequest request;

  Addition(Book book, PromiseRequest request) {
    this.book = book;
    this.id = request.order().orElseGet(() -> freeId(book));
    this.request = request;
  }

  private static String freeId(Book book) {
    List<String> taken = book.orders().stream().map(Order::id).toList();
    String id = ID;
    for (int number = 2; taken.contains(id); number++) {
      id = ID + "-" + number;
    }
    return id;
  }

  String id() {
    return id;
  }

  /** The book without the new order. */
  Book book() {
    return book;
  }

  String piece() {
    return request.piece();
  }

  /** The book with the new order, due at a moment. */
  Book due(OffsetDateTime moment) {
    List<Order> orders = new ArrayList<>(book.orders());
    orders.add(order(moment, request.quantity()));
    return book.withOrders(orders);
  }

  /** A book that owes nothing but so many of the piece and has settled nothing. */
  Book alone(OffsetDateTime moment, int quantity) {
    return book.withOrders(List.of(order(moment, quantity))).withPins(List.of());
  }

  private Order order(OffsetDateTime moment, int quantity) {
    LocalDateTime due = local(moment);
    Line line = new Line(request.piece(), quantity, Optional.empty());
    return new Order(id, request.buyer(), "", due, BigDecimal.ONE, List.of(line));
  }

  /** The moment of a local time of the studio. */
  OffsetDateTime moment(LocalDateTime local) {
    return local.atZone(book.studio().timeZone()).toOffsetDateTime();
  }

  /**
   * The local time of a moment. In the second pass of an hour that comes twice it is the end of
   * that hour, as any time within it would mean the first pass.
   */
  private LocalDateTime local(OffsetDateTime moment) {
    ZoneId zone = book.studio().timeZone();
    LocalDateTime local = moment.atZoneSameInstant(zone).toLocalDateTime();
    boolean second = moment(local).isBefore(moment);
    return second ? zone.getRules().getTransition(local).getDateTimeBefore() : local;
  }
}
