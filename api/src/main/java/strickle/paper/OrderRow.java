package strickle.paper;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Line;

/**
 * A row of a table of orders.
 *
 * @param where where it stands: "orders.csv line 3"
 * @param cells its cells by their columns; a column that is not there has none
 * @param decimalComma whether 1,5 is a number
 */
record OrderRow(String where, Map<String, String> cells, boolean decimalComma) {

  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,9}");
  private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,20}([.][0-9]{1,20})?");

  /** The id of its order, without spaces at its ends; may be empty. */
  String id() {
    return text("order").strip();
  }

  /** A cell as it stands there; empty when there is none. */
  String text(String column) {
    return cells.getOrDefault(column, "");
  }

  /** A fault in one of its cells. */
  Fault fault(String column, String found, String right) {
    return new Fault(where + ", " + column, found, right);
  }

  /** The line of the order that it is, or nothing with the faults added. */
  Optional<Line> line(List<Fault> faults) {
    Optional<BigDecimal> quantity = number("quantity", WHOLE, "a whole number such as 4", faults);
    boolean priced = !text("price").isBlank();
    Optional<BigDecimal> price =
        priced ? number("price", DECIMAL, "a number such as 68.00", faults) : Optional.empty();
    if (quantity.isEmpty() || (priced && price.isEmpty())) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Line(text("piece").strip(), quantity.get().intValue(), price));
    } catch (Faulty faulty) {
      faulty.faults().forEach(one -> faults.add(named(one)));
      return Optional.empty();
    }
  }

  /** A fault of a record's field as one of the cell it came from. */
  Fault named(Fault fault) {
    return fault(fault.path().substring(1), fault.found(), fault.right());
  }

  /** A weight, or nothing with a fault added. */
  Optional<BigDecimal> weight(List<Fault> faults) {
    return number("weight", DECIMAL, "a number such as 1 or 2.5", faults);
  }

  /** A local time, or nothing with a fault added. */
  Optional<LocalDateTime> due(List<Fault> faults) {
    String text = text("due").strip();
    try {
      return Optional.of(
          LocalDateTime.parse(text.replace(' ', 'T'), DateTimeFormatter.ISO_LOCAL_DATE_TIME));
    } catch (DateTimeException unreadable) {
      String right = "a date with a time such as 2027-04-16T17:00";
      faults.add(fault("due", text.isEmpty() ? "nothing" : OrderTable.quoted(text), right));
      return Optional.empty();
    }
  }

  private Optional<BigDecimal> number(
      String column, Pattern pattern, String right, List<Fault> faults) {
    String text = text(column).strip();
    String plain = decimalComma ? text.replace(',', '.') : text;
    if (pattern.matcher(plain).matches()) {
      return Optional.of(new BigDecimal(plain));
    }
    faults.add(fault(column, text.isEmpty() ? "nothing" : OrderTable.quoted(text), right));
    return Optional.empty();
  }
}
