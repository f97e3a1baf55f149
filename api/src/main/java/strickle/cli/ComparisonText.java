package strickle.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import strickle.cli.Table.Column;
import strickle.price.CostComparison;
import strickle.price.CostComparison.LineComparison;
import strickle.price.CostComparison.Reason;
import strickle.price.MinuteKind;
import strickle.price.PiecePrices;

/** What a piece costs by its typical run and as planned, line by line, and why they differ. */
final class ComparisonText {

  private static final Column AMOUNT = Column.right(10, 16);

  private ComparisonText() {}

  /** The lines of it. */
  static List<String> lines(PiecePrices piece, CostComparison comparison, CostText costs) {
    Table table = new Table("  ", new Column(22, 40, false), AMOUNT, AMOUNT, AMOUNT);
    table.row("", "typical run", "as planned", "difference");
    List<LineComparison> lines = comparison.lines();
    List<BigDecimal> planned =
        costs.shares(piece.full(), lines.stream().map(LineComparison::planned).toList());
    List<BigDecimal> standard = standard(comparison, planned, costs);
    for (int i = 0; i < lines.size(); i++) {
      row(table, lines.get(i).what(), standard.get(i), planned.get(i), costs);
    }
    row(table, "full cost", comparison.standardFull(), piece.full(), costs);
    BigDecimal before = comparison.standardMinutes();
    table.row(
        "minutes",
        CostText.tenths(before),
        CostText.tenths(piece.minutes()),
        CostText.signedTenths(piece.minutes().subtract(before)));
    List<String> text = new ArrayList<>(table.lines());
    comparison.reasons().forEach(reason -> text.addAll(because(reason, costs)));
    return text;
  }

  private static void row(
      Table table, String what, BigDecimal before, BigDecimal after, CostText costs) {
    // Of the amounts as they are shown, so that every row can be checked by eye.
    BigDecimal more = new BigDecimal(costs.of(after)).subtract(new BigDecimal(costs.of(before)));
    table.row(what, costs.of(before), costs.of(after), costs.signed(more));
  }

  /** What is the same is rounded the same, and the other lines share what is left. */
  private static List<BigDecimal> standard(
      CostComparison comparison, List<BigDecimal> planned, CostText costs) {
    List<BigDecimal> shown = new ArrayList<>(planned);
    List<Integer> others = new ArrayList<>();
    List<BigDecimal> amounts = new ArrayList<>();
    BigDecimal left = new BigDecimal(costs.of(comparison.standardFull()));
    for (int i = 0; i < shown.size(); i++) {
      LineComparison line = comparison.lines().get(i);
      if (line.difference().signum() == 0) {
        left = left.subtract(shown.get(i));
      } else {
        others.add(i);
        amounts.add(line.standard());
      }
    }
    if (!others.isEmpty()) {
      List<BigDecimal> shares = costs.shares(left, amounts);
      others.forEach(i -> shown.set(i, shares.get(others.indexOf(i))));
    }
    return shown;
  }

  private static List<String> because(Reason reason, CostText costs) {
    String text =
        named(reason.what())
            + " "
            + CostText.signedTenths(reason.minutes())
            + " min, "
            + costs.signed(reason.amount())
            + ": "
            + reason.why();
    return Lines.paragraph("  ", "    ", text);
  }

  private static String named(MinuteKind kind) {
    return switch (kind) {
      case CASTING -> "pouring and taking out";
      case LOT -> "mixing and washing up";
      case SETUP -> "setting up for steps";
      case PIECE -> "steps";
      case BEYOND -> "as it went";
    };
  }
}
