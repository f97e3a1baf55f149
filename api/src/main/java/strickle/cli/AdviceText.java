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
    add(
        lines,
        "Steps that name a coat, a leaf or a glue, and were read as other work: ",
        RouteSense.passedOver(book));
    add(
        lines,
        "Steps whose order was not looked at, as their words are not known: ",
        RouteSense.unread(book));
    return lines;
  }

  private static void add(List<String> lines, String what, List<String> steps) {
    if (!steps.isEmpty()) {
      lines.add("");
      String quoted = String.join(", ", steps.stream().map(step -> '"' + step + '"').toList());
      lines.addAll(Lines.wrap(what + quoted, Lines.WIDEST));
    }
  }
}
