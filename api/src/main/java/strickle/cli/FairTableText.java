package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.FairTable;
import strickle.price.FairTable.FairPiece;

/** A fair's table cost, spread over what is expected to sell. */
final class FairTableText {

  private static final Column NUMBER = Column.right(8, 14);

  private FairTableText() {}

  /** The lines of it. */
  static List<String> lines(Book book, FairTable table, CostText costs) {
    List<String> lines = new ArrayList<>(Lines.wrap(sentence(book, table, costs), Lines.WIDEST));
    Table shown =
        new Table("  ", new Column(20, 28, false), NUMBER, NUMBER, NUMBER, NUMBER, NUMBER, NUMBER);
    shown.row("each piece", "expected", "price", "net", "full cost", "profit", "with table");
    for (FairPiece piece : table.pieces()) {
      shown.row(
          book.piece(piece.piece()).name(),
          CostText.tenths(piece.expected()),
          costs.of(piece.price()),
          costs.of(piece.net()),
          costs.of(piece.full()),
          costs.of(piece.profit()),
          costs.of(piece.withTable()));
    }
    lines.addAll(shown.lines());
    return lines;
  }

  private static String sentence(Book book, FairTable table, CostText costs) {
    String each =
        table.perPiece().map(amount -> ", which is " + costs.of(amount) + " each").orElse("");
    return book.fair(table.fair()).name()
        + ": the table costs "
        + costs.of(table.tableCost())
        + "; "
        + CostText.tenths(table.expected())
        + " pieces are expected to sell when enough are brought"
        + each
        + ". They take in "
        + costs.of(table.takings())
        + " and leave "
        + costs.of(table.profit())
        + " when the table is paid"
        + table.breakEvenPieces().map(FairTableText::paid).orElse("; no number of them pays for it")
        + ".";
  }

  private static String paid(BigDecimal pieces) {
    BigDecimal whole = pieces.setScale(0, RoundingMode.CEILING);
    return "; " + whole.toPlainString() + " pay for it";
  }
}
