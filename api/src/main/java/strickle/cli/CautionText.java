package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strickle.book.Book;
import strickle.safety.Caution;
import strickle.safety.Shown;

/** Cautions as text: briefly over a plan, and whole by themselves. */
final class CautionText {

  private static final int FEW = 3;

  private CautionText() {}

  /** The lines over a plan: each caution once, with the acts it is about. */
  static List<String> brief(List<Shown> cautions) {
    List<String> lines = new ArrayList<>();
    lines.add("Take care");
    for (Shown shown : cautions) {
      String text = shown.caution().brief() + " (" + few(shown.where()) + ")";
      lines.addAll(Lines.paragraph("  ", "    ", text));
    }
    String sources = " \"strickle cautions\" says why, and whose word it is.";
    lines.addAll(Lines.paragraph("  ", "    ", Caution.FOLLOW + sources));
    return lines;
  }

  /** The lines under an answer about one act: each caution once, with whose word it is. */
  static List<String> sourced(List<Shown> cautions) {
    List<String> lines = new ArrayList<>();
    if (cautions.isEmpty()) {
      return lines;
    }
    lines.add("");
    lines.add("Take care");
    for (Shown shown : cautions) {
      String where = few(shown.where()) + "; source: " + shown.caution().source();
      lines.addAll(Lines.paragraph("  ", "    ", shown.caution().brief() + " (" + where + ")"));
    }
    lines.addAll(Lines.paragraph("  ", "    ", Caution.FOLLOW));
    return lines;
  }

  /** The whole page, with a newline behind each line. */
  static String whole(Book book, List<Shown> cautions) {
    List<String> lines = new ArrayList<>();
    lines.addAll(Lines.wrap(book.studio().name() + ": cautions", Lines.WIDEST));
    for (Shown shown : cautions) {
      lines.add("");
      add(lines, shown);
    }
    lines.add("");
    lines.add(Caution.FOLLOW);
    return String.join("\n", lines) + "\n";
  }

  private static void add(List<String> lines, Shown shown) {
    Caution caution = shown.caution();
    lines.add(capital(caution.title()));
    String text = capital(caution.brief()) + ". " + caution.more();
    lines.addAll(Lines.paragraph("  ", "  ", text));
    lines.addAll(Lines.paragraph("  where   ", "          ", String.join("; ", shown.where())));
    lines.addAll(Lines.paragraph("  source  ", "          ", caution.source()));
  }

  private static String capital(String title) {
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }

  private static String few(List<String> where) {
    int more = where.size() - FEW;
    String first = String.join("; ", where.stream().limit(FEW).toList());
    return more > 0 ? first + " and " + more + " more" : first;
  }
}
