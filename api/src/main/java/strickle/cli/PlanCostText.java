package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.PlanCost;
import strickle.price.PlanCost.PieceShare;

/** What a whole plan costs, shared out to its pieces; rows and columns add up as they stand. */
final class PlanCostText {

  private static final Column NUMBER = Column.right(8, 14);

  private PlanCostText() {}

  /** The lines of it. */
  static List<String> lines(Book book, PlanCost cost, CostText costs) {
    Table table =
        new Table(
            "  ",
            new Column(20, 28, false),
            NUMBER,
            NUMBER,
            NUMBER,
            NUMBER,
            NUMBER,
            NUMBER,
            NUMBER);
    table.heading("What the plan costs");
    table.row("", "good", "minutes", "material", "labour", "wear", "overhead", "full cost");
    for (PieceShare share : cost.pieces()) {
      table.row(
          book.piece(share.piece()).name(),
          share.good().setScale(1, RoundingMode.HALF_UP).toPlainString(),
          CostText.tenths(share.minutes()),
          costs.of(share.material()),
          costs.of(share.labour()),
          costs.of(share.wear()),
          costs.of(share.overhead()),
          costs.of(share.full()));
    }
    table.row(
        "together",
        "",
        CostText.tenths(sum(cost, PieceShare::minutes)),
        costs.of(sum(cost, PieceShare::material)),
        costs.of(sum(cost, PieceShare::labour)),
        costs.of(sum(cost, PieceShare::wear)),
        costs.of(sum(cost, PieceShare::overhead)),
        costs.of(cost.full()));
    return table.lines();
  }

  private static BigDecimal sum(PlanCost cost, Function<PieceShare, BigDecimal> part) {
    return cost.pieces().stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
