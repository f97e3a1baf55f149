package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.PriceBasis;
import strickle.price.Sensitivity;
import strickle.price.Sensitivity.MovingNumber;

/** The numbers that move the profit most, as a page of text. */
final class SensitivityText {

  private SensitivityText() {}

  /** The page, with a newline behind each line. */
  static String of(Book book, Sensitivity answer) {
    CostText costs = CostText.in(answer.currency());
    List<String> lines = new ArrayList<>(Lines.wrap(heading(book, answer, costs), Lines.WIDEST));
    String by = TargetText.plain(answer.byPercent()) + " %";
    Column change = Column.right(12, 16);
    Table table = new Table("  ", new Column(28, 48, false), Column.right(20, 24), change, change);
    table.row("what changes the profit most", "now", by + " less", by + " more");
    for (MovingNumber number : answer.numbers()) {
      table.row(
          number.piece().map(id -> book.piece(id).name() + ": ").orElse("") + number.what(),
          value(number),
          costs.signed(number.profitAtLow().subtract(answer.profit())),
          costs.signed(number.profitAtHigh().subtract(answer.profit())));
    }
    lines.addAll(table.lines());
    return String.join("\n", lines) + "\n";
  }

  private static String value(MovingNumber number) {
    BigDecimal present = number.present().setScale(2, RoundingMode.HALF_UP);
    return TargetText.plain(present) + " " + number.unit();
  }

  private static String heading(Book book, Sensitivity answer, CostText costs) {
    String what =
        answer
            .piece()
            .map(id -> book.piece(id).name())
            .orElseGet(() -> "all that is ordered (" + Words.count(answer.sold(), "piece") + ")");
    String basis =
        answer.basis() == PriceBasis.STANDARD ? "by the typical run" : "with the minutes planned";
    return what
        + ", "
        + book.channel(answer.channel()).name()
        + ": a profit of "
        + costs.of(answer.profit())
        + " "
        + answer.currency().getCode()
        + ", "
        + basis
        + ". Each number alone, all else as it is:";
  }
}
