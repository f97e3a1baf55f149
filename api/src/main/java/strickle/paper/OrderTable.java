package strickle.paper;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Line;
import strickle.book.Nearest;
import strickle.book.Order;

/**
 * Orders as CSV (RFC 4180): a row for each line of an order, columns in any order, named like the
 * fields of a book. What belongs to the whole order may stand in one of its rows or in all.
 */
public final class OrderTable {

  /** The columns, as they are written. */
  public static final List<String> COLUMNS =
      List.of("order", "for", "kind", "due", "weight", "piece", "quantity", "price");

  private static final Set<String> NEEDED = Set.of("order", "due", "piece", "quantity");

  private OrderTable() {}

  /** The orders of a book as CSV, a first line of names before them. */
  public static String write(Book book) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(COLUMNS);
    for (Order order : book.orders()) {
      for (Line line : order.lines()) {
        rows.add(row(order, line));
      }
    }
    return CsvText.write(rows);
  }

  private static List<String> row(Order order, Line line) {
    return List.of(
        order.id(),
        order.buyer(),
        order.kind(),
        order.due().toString(),
        order.weight().toPlainString(),
        line.piece(),
        Integer.toString(line.quantity()),
        line.price().map(BigDecimal::toPlainString).orElse(""));
  }

  /**
   * Reads orders. One with any bad row is left out whole: half an order is worse than none.
   *
   * @param book whose pieces they are of
   * @param name what the text is called in faults, such as the name of its file
   * @param csv cells parted by commas, or by semicolons, and then a decimal comma will do
   * @return the good orders, and what is wrong with the others
   * @throws Faulty when it is not CSV, the columns are others, there is nothing below them, or
   *     there are more than 100000 rows
   */
  public static OrderImport read(Book book, String name, String csv) {
    CsvText.Sheet sheet = CsvText.read(name, csv);
    List<CsvText.Row> rows = sheet.rows();
    if (rows.isEmpty()) {
      throw new Faulty(List.of(new Fault(name, "an empty file", right())));
    }
    List<String> columns = columns(rows.get(0));
    check(name + " line " + rows.get(0).line(), columns);
    if (rows.size() == 1) {
      String right = "a row for each line of an order";
      throw new Faulty(List.of(new Fault(name, "a first line and nothing below it", right)));
    }
    OrderReading reading = new OrderReading(book, name, columns, sheet.semicolons());
    rows.subList(1, rows.size()).forEach(reading::add);
    return reading.done();
  }

  private static List<String> columns(CsvText.Row first) {
    return first.cells().stream().map(cell -> cell.strip().toLowerCase(Locale.ROOT)).toList();
  }

  private static void check(String where, List<String> columns) {
    List<Fault> faults = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (String column : columns) {
      if (!COLUMNS.contains(column)) {
        faults.add(new Fault(where, quoted(column), oneOf(column, COLUMNS)));
      } else if (!seen.add(column)) {
        faults.add(new Fault(where, quoted(column) + " twice", "each column once"));
      }
    }
    COLUMNS.stream()
        .filter(column -> NEEDED.contains(column) && !seen.contains(column))
        .forEach(missing -> faults.add(new Fault(where, "no " + quoted(missing), right())));
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** "one of …; maybe …". */
  private static String oneOf(String word, Collection<String> known) {
    Optional<String> near = Nearest.to(word, known);
    return "one of " + String.join(", ", known) + near.map(one -> "; maybe " + one).orElse("");
  }

  private static String right() {
    return "a first line with at least order, due, piece and quantity";
  }

  /** A cell as a fault shows it, cut after 80 characters. */
  static String quoted(String cell) {
    String shown = cell.replaceAll("\\p{Cntrl}+", " ");
    return '"' + (shown.length() <= 80 ? shown : shown.substring(0, 79) + "…") + '"';
  }
}
