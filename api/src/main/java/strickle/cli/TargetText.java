package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.LeverTable;
import strickle.price.PriceBasis;
import strickle.price.ReferencePrice;
import strickle.price.Target;
import strickle.price.Target.LargeLine;

/** A target check as a page of text. */
final class TargetText {

  private final Book book;
  private final Target target;
  private final CostText costs;
  private final List<String> lines = new ArrayList<>();

  private TargetText(Book book, Target target) {
    this.book = book;
    this.target = target;
    this.costs = CostText.in(target.currency());
  }

  /** The page, with a newline behind each line. */
  static String of(Book book, Target target) {
    TargetText text = new TargetText(book, target);
    text.answer();
    text.figures();
    target.reference().ifPresent(text::reference);
    text.largest();
    text.lines.add("");
    text.lines.addAll(LeverText.lines(target, text.costs));
    text.table();
    return String.join("\n", text.lines) + "\n";
  }

  private void answer() {
    String asked =
        book.piece(target.piece()).name()
            + " at "
            + costs.of(target.price())
            + " "
            + target.currency().getCode()
            + ", "
            + book.channel(target.channel()).name()
            + ": ";
    String margin = percent(target.marginPercent());
    String wanted = plain(target.wantedPercent()) + " %";
    String gap = costs.of(target.gap().abs());
    String verdict =
        target.holds()
            ? "the margin of "
                + wanted
                + " holds. It is "
                + margin
                + ", and the piece may cost "
                + gap
                + " more."
            : "the margin of "
                + wanted
                + " does not hold. It is "
                + margin
                + ", and the piece costs "
                + gap
                + " too much.";
    lines.addAll(Lines.wrap(asked + verdict, Lines.WIDEST));
  }

  private void figures() {
    Column number = Column.right(10, 16);
    lines.addAll(
        new Table("  ", number, number, number, number, number)
            .row("minutes", "full cost", "may cost", "net", "profit")
            .row(
                CostText.tenths(target.minutes()),
                costs.of(target.full()),
                costs.of(target.mostCost().setScale(costs.decimals(), RoundingMode.FLOOR)),
                costs.of(target.net()),
                costs.of(target.profit()))
            .lines());
    lines.add(
        target.basis() == PriceBasis.STANDARD
            ? "  By its typical run, poured as a lot of its own."
            : "  As planned, what a lot takes together split by wet mass.");
  }

  private void reference(ReferencePrice reference) {
    String text =
        "Held against a bought one at "
            + costs.of(reference.price())
            + ": it costs "
            + percent(reference.costPercent())
            + " of that, and is sold at "
            + percent(reference.pricePercent())
            + " of it.";
    lines.addAll(Lines.paragraph("  ", "  ", text));
  }

  private void largest() {
    lines.add("");
    Table table = new Table("  ", Column.left(40), Column.right(10, 16), Column.right(8, 10));
    table.heading("The largest costs");
    for (LargeLine line : target.largest()) {
      table.row(line.what(), costs.of(line.amount()), percent(line.sharePercent()));
    }
    lines.addAll(table.lines());
  }

  private void table() {
    LeverTable table = target.table();
    lines.add("");
    lines.add(
        "Castings in a run (a lot of its own) by minutes saved: the margin, * where it holds");
    Column[] columns = new Column[1 + table.minutesLessPercent().size()];
    columns[0] = Column.right(8, 8);
    for (int i = 1; i < columns.length; i++) {
      columns[i] = Column.right(10, 14);
    }
    Table shown = new Table("  ", columns);
    List<String> head = new ArrayList<>(List.of("castings"));
    table.minutesLessPercent().forEach(less -> head.add(less == 0 ? "as now" : "-" + less + " %"));
    shown.row(head.toArray(String[]::new));
    for (LeverTable.Row row : table.rows()) {
      List<String> cells = new ArrayList<>(List.of(Integer.toString(row.castings())));
      row.cells()
          .forEach(cell -> cells.add(percent(cell.marginPercent()) + (cell.holds() ? "*" : " ")));
      shown.row(cells.toArray(String[]::new));
    }
    lines.addAll(shown.lines());
  }

  static String percent(BigDecimal percent) {
    return CostText.tenths(percent) + " %";
  }

  static String plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() < 0
        ? stripped.setScale(0, RoundingMode.UNNECESSARY).toPlainString()
        : stripped.toPlainString();
  }
}
