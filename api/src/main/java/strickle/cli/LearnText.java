package strickle.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.plan.learn.Lesson;
import strickle.plan.learn.Lessons;

/** Lessons as a page of text. */
final class LearnText {

  private static final int WIDEST_NAME = 38;

  private LearnText() {}

  /** The page, with a newline behind each line. */
  static String of(Book book, Lessons lessons) {
    List<String> lines = new ArrayList<>();
    lines.add(book.studio().name() + ": what the records say of the book");
    lines.add("");
    if (lessons.lessons().isEmpty()) {
      lines.add("Nothing yet: no number of the book was recorded at least twice.");
      return String.join("\n", lines) + "\n";
    }
    lines.addAll(table(lessons).lines());
    lines.add("");
    int offers = lessons.offers().size();
    lines.addAll(Lines.wrap(offers == 0 ? none() : some(offers), Lines.WIDEST));
    return String.join("\n", lines) + "\n";
  }

  private static Table table(Lessons lessons) {
    Table table =
        new Table(
            "  ",
            Column.left(WIDEST_NAME),
            Column.right(5, 7),
            Column.right(5, 8),
            Column.right(7, 9),
            Column.left(18),
            Column.left(12));
    table.row("", "of", "book", "records", "90 % sure", "to take over");
    for (Lesson one : lessons.lessons()) {
      table.row(
          one.what() + (one.unit().equals("percent") ? ", %" : ", min"),
          "" + one.records(),
          plain(one.book()),
          plain(one.estimate()),
          plain(one.low()) + " to " + plain(one.high()),
          one.offer().map(LearnText::plain).orElse(one.differs() ? "differs" : ""));
    }
    return table;
  }

  private static String none() {
    return "Nothing to take over: the book's numbers lie in their bands, would stay the same whole"
        + " minutes, or too little is recorded.";
  }

  private static String some(int offers) {
    return Words.count(offers, "number")
        + " could be taken over: --write writes a book that does. Nothing is changed by itself.";
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
