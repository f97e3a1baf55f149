package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.safety.Advice;
import strickle.safety.RouteSense;

/** What makes no sense in the routes of a book, as text. */
final class AdviceText {

  private AdviceText() {}

  /** The lines of it; none when every route makes sense and every step was understood. */
  static List<String> lines(Book book) {
    List<String> lines = new ArrayList<>();
    List<Advice> advice = RouteSense.of(book);
    if (!advice.isEmpty()) {
      lines.add("");
      lines.add("Finishing order, as advice; nothing is refused:");
      advice.forEach(one -> lines.addAll(Lines.paragraph("  ", "    ", one.toString())));
    }
    List<String> unread = RouteSense.unread(book);
    if (!unread.isEmpty()) {
      lines.add("");
      String steps = String.join(", ", unread.stream().map(step -> '"' + step + '"').toList());
      lines.addAll(
          Lines.wrap(
              "Steps whose order was not looked at, as their words are not known: " + steps,
              Lines.WIDEST));
    }
    return lines;
  }
}
