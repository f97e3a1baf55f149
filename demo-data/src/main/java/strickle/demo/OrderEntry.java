package strickle.demo;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Line;
import strickle.book.Order;

/** Writes one order: who for, when due, how much it matters, its lines. */
final class OrderEntry {

  private final String id;
  private final String buyer;
  private final String kind;
  private final List<Line> lines = new ArrayList<>();
  private LocalDateTime due;
  private BigDecimal weight = BigDecimal.ONE;

  private OrderEntry(String id, String buyer, String kind) {
    this.id = id;
    this.buyer = buyer;
    this.kind = kind;
  }

  /** A piece of work somebody asked for. */
  static OrderEntry custom(String id, String buyer) {
    return new OrderEntry(id, buyer, "custom");
  }

  /** Stock to take to a fair. */
  static OrderEntry fair(String id, String fair) {
    return new OrderEntry(id, fair, "fair");
  }

  /** When it must be ready, in local time. */
  OrderEntry due(String local) {
    return due(LocalDateTime.parse(local));
  }

  /** When it must be ready, in local time. */
  OrderEntry due(LocalDateTime local) {
    due = local;
    return this;
  }

  /** How much a late hour matters; 1 unless said. */
  OrderEntry matters(String itsWeight) {
    weight = Entries.amount(itsWeight);
    return this;
  }

  /** So many of a piece, at its list price. */
  OrderEntry line(String piece, int quantity) {
    lines.add(new Line(piece, quantity, Optional.empty()));
    return this;
  }

  /** So many of a piece, at a price agreed. */
  OrderEntry line(String piece, int quantity, String price) {
    lines.add(new Line(piece, quantity, Optional.of(Entries.amount(price))));
    return this;
  }

  /** Lines written elsewhere. */
  OrderEntry lines(List<Line> written) {
    lines.addAll(written);
    return this;
  }

  /** The order as written. */
  Order build() {
    return new Order(id, buyer, kind, due, weight, lines);
  }
}
