package strickle.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Nearest;
import strickle.book.Order;
import strickle.book.Piece;

/** Gathers the rows of a table into orders, and whatever is wrong with them. */
final class OrderReading {

  private final String name;
  private final List<String> columns;
  private final boolean decimalComma;
  private final Set<String> pieces;
  private final Map<String, OrderRows> orders = new LinkedHashMap<>();
  private final Set<String> bad = new LinkedHashSet<>();
  private final List<Fault> faults = new ArrayList<>();

  OrderReading(Book book, String name, List<String> columns, boolean decimalComma) {
    this.name = name;
    this.columns = columns;
    this.decimalComma = decimalComma;
    this.pieces = new LinkedHashSet<>(book.pieces().stream().map(Piece::id).toList());
  }

  /** Takes in a row. */
  void add(CsvText.Row row) {
    OrderRow cells = cells(row);
    String id = cells.id();
    if (id.isEmpty()) {
      faults.add(cells.fault("order", "nothing", "the id of the order the row belongs to"));
      return;
    }
    int before = faults.size();
    OrderRows order = orders.computeIfAbsent(id, OrderRows::new);
    order.add(cells, faults);
    piece(cells);
    mark(id, before);
  }

  private OrderRow cells(CsvText.Row row) {
    Map<String, String> cells = new HashMap<>();
    for (int i = 0; i < columns.size() && i < row.cells().size(); i++) {
      cells.put(columns.get(i), row.cells().get(i));
    }
    OrderRow read = new OrderRow(name + " line " + row.line(), cells, decimalComma);
    if (row.cells().size() != columns.size()) {
      int before = faults.size();
      String right = columns.size() + ", as in the first line";
      faults.add(new Fault(read.where(), row.cells().size() + " cells", right));
      mark(read.id(), before);
    }
    return read;
  }

  private void mark(String id, int before) {
    if (faults.size() > before && !id.isEmpty()) {
      bad.add(id);
    }
  }

  private void piece(OrderRow cells) {
    String piece = cells.text("piece").strip();
    if (!piece.isEmpty() && !pieces.contains(piece)) {
      Optional<String> near = Nearest.to(piece, pieces);
      String right = "the id of a piece in the book" + near.map(one -> ", maybe " + one).orElse("");
      faults.add(cells.fault("piece", OrderTable.quoted(piece), right));
    }
  }

  /** What has been read. */
  OrderImport done() {
    List<Order> good = new ArrayList<>();
    for (OrderRows rows : orders.values()) {
      if (!bad.contains(rows.id())) {
        int before = faults.size();
        Optional<Order> order = rows.order(faults);
        mark(rows.id(), before);
        order.ifPresent(good::add);
      }
    }
    return new OrderImport(good, List.copyOf(bad), faults);
  }
}
