package strickle.paper;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Line;
import strickle.book.Order;

/** The rows of one order. */
final class OrderRows {

  /** What belongs to the whole order. */
  private static final List<String> SHARED = List.of("for", "kind", "due", "weight");

  private final String id;
  private final List<Line> lines = new ArrayList<>();
  private final Map<String, OrderRow> telling = new HashMap<>();
  private OrderRow first;

  OrderRows(String id) {
    this.id = id;
  }

  String id() {
    return id;
  }

  /** Takes in a row; what is wrong with it is added to the faults. */
  void add(OrderRow row, List<Fault> faults) {
    if (first == null) {
      first = row;
    }
    for (String column : SHARED) {
      if (!row.text(column).isEmpty()) {
        OrderRow before = telling.putIfAbsent(column, row);
        agree(column, before == null ? row : before, row, faults);
      }
    }
    row.line(faults).ifPresent(lines::add);
  }

  private static void agree(String column, OrderRow before, OrderRow row, List<Fault> faults) {
    String told = before.text(column);
    if (!told.equals(row.text(column))) {
      String right = OrderTable.quoted(told) + " as in " + before.where() + ", or nothing";
      faults.add(row.fault(column, OrderTable.quoted(row.text(column)), right));
    }
  }

  /** The order, or nothing with the faults added. */
  Optional<Order> order(List<Fault> faults) {
    int before = faults.size();
    Optional<LocalDateTime> due = teller("due").due(faults);
    Optional<BigDecimal> weight =
        telling.containsKey("weight")
            ? teller("weight").weight(faults)
            : Optional.of(BigDecimal.ONE);
    if (faults.size() > before) {
      return Optional.empty();
    }
    try {
      String buyer = teller("for").text("for");
      String kind = teller("kind").text("kind");
      return Optional.of(
          new Order(id, buyer, kind, due.orElseThrow(), weight.orElseThrow(), lines));
    } catch (Faulty faulty) {
      faulty.faults().forEach(one -> faults.add(named(one)));
      return Optional.empty();
    }
  }

  private OrderRow teller(String column) {
    return telling.getOrDefault(column, first);
  }

  private Fault named(Fault fault) {
    String column = fault.path().equals(".id") ? "order" : fault.path().substring(1);
    return teller(column).fault(column, fault.found(), fault.right());
  }
}
