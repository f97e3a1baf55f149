package strickle.plan.whatif;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Nearest;
import strickle.book.Window;

/** How a change and what is wrong with it are said. */
final class Say {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

  private static final int HOUR = 60;

  private Say() {}

  /** "Sat 10 Apr 2027". */
  static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** "09:00-12:00, 13:00-17:00". */
  static String windows(List<Window> windows) {
    return String.join(", ", windows.stream().map(Window::toString).toList());
  }

  /** "3 h", "45 min", "2 h 30 min". */
  static String minutes(int minutes) {
    String hours = minutes >= HOUR ? minutes / HOUR + " h" : "";
    String rest = minutes % HOUR > 0 || hours.isEmpty() ? minutes % HOUR + " min" : "";
    return (hours + " " + rest).strip();
  }

  /** A number without needless decimals. */
  static String number(double number) {
    BigDecimal plain = BigDecimal.valueOf(number).stripTrailingZeros();
    return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
  }

  /** Money with the decimals of the book's currency. */
  static String money(Book book, BigDecimal amount) {
    int decimals = book.studio().currency().getDecimalPlaces();
    return amount.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** "one more mid tub", "2 more of the form “mid tub”". */
  static String more(int units, String name) {
    return units == 1 ? "one more " + name : units + " more of the form “" + name + "”";
  }

  /** The fault of an id that is nowhere, with the nearest there is; none when it is there. */
  static List<Fault> missing(String what, String id, Collection<String> known) {
    if (known.contains(id)) {
      return List.of();
    }
    String right =
        known.isEmpty()
            ? "a " + what + " of the book, which has none"
            : Nearest.to(id, known)
                .map(near -> "a " + what + " of the book, maybe \"" + near + "\"")
                .orElse("a " + what + " of the book: " + String.join(", ", known));
    return List.of(fault("the " + what + " \"" + id + "\"", right));
  }

  /** A fault of the change itself. */
  static Fault fault(String found, String right) {
    return new Fault("", found, right);
  }

  /** Noted unless a rule holds. */
  static List<Fault> unless(boolean holds, String found, String right) {
    return holds ? List.of() : List.of(fault(found, right));
  }

  /** Some faults and others. */
  static List<Fault> both(List<Fault> some, List<Fault> others) {
    List<Fault> all = new ArrayList<>(some);
    all.addAll(others);
    return all;
  }

  /**
   * Lets a change through that has no fault.
   *
   * @throws Faulty with all faults when there are any
   */
  static void must(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }
}
