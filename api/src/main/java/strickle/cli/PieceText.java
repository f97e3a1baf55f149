package strickle.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.ChannelPrice;
import strickle.price.CostLine;
import strickle.price.PiecePrices;
import strickle.price.PriceRequest;
import strickle.price.Prices;

/** What one piece costs and, for each channel, what it brings and what to ask. */
final class PieceText {

  private static final String NONE = "-";

  /** Wide enough for four-digit prices, so that the tables of most studios look alike. */
  private static final int LEAST = 8;

  private static final int MOST = 14;

  private static final int CHANNEL = 20;

  private final Book book;
  private final CostText costs;

  private PieceText(Book book, Prices prices) {
    this.book = book;
    this.costs = CostText.in(prices.currency());
  }

  /** The lines of it. */
  static List<String> lines(
      Book book, PriceRequest request, Prices prices, PiecePrices piece, boolean each) {
    PieceText text = new PieceText(book, prices);
    List<String> lines = new ArrayList<>();
    lines.addAll(Lines.wrap(book.piece(piece.piece()).name(), Lines.WIDEST));
    lines.addAll(text.cost(piece).lines());
    if (each && piece.comparison().isEmpty()) {
      lines.addAll(text.each(piece).lines());
    }
    piece
        .comparison()
        .ifPresent(other -> lines.addAll(ComparisonText.lines(piece, other, text.costs)));
    if (!piece.channels().isEmpty()) {
      lines.addAll(text.channels(piece).lines());
      lines.addAll(new AskText(book, request, text.costs).lines(piece));
    }
    return lines;
  }

  private Table cost(PiecePrices piece) {
    Column number = Column.right(LEAST, MOST);
    List<String> cells = new ArrayList<>(List.of(CostText.tenths(piece.minutes())));
    cells.addAll(
        costs.sharesAndWhole(
            piece.full(),
            List.of(piece.material(), piece.labour(), piece.wear(), piece.overhead())));
    return new Table("  ", number, number, number, number, number, number)
        .row("minutes", "material", "labour", "wear", "overhead", "full cost")
        .row(cells.toArray(String[]::new));
  }

  /** Every line of the cost; as shown they add up to the full cost as shown. */
  private Table each(PiecePrices piece) {
    Table table = new Table("  ", new Column(28, 40, false), Column.right(LEAST, MOST));
    List<BigDecimal> amounts =
        costs.shares(piece.full(), piece.lines().stream().map(CostLine::amount).toList());
    for (int i = 0; i < amounts.size(); i++) {
      table.row(piece.lines().get(i).what(), costs.of(amounts.get(i)));
    }
    return table.row("full cost", costs.of(piece.full()));
  }

  private Table channels(PiecePrices piece) {
    Column number = Column.right(LEAST, MOST);
    Table table =
        new Table(
            "  ",
            new Column(CHANNEL, CHANNEL, false),
            number,
            number,
            number,
            number,
            number,
            number,
            number);
    table.row("sold by", "price", "net", "profit", "margin", "per hour", "break-even", "suggested");
    for (ChannelPrice channel : piece.channels()) {
      table.row(
          book.channel(channel.channel()).name(),
          amount(channel.price()),
          amount(channel.net()),
          amount(channel.profit()),
          channel.marginPercent().map(percent -> CostText.tenths(percent) + " %").orElse(NONE),
          amount(channel.earnedPerHour()),
          costs.up(channel.breakEven()),
          costs.of(channel.suggested()));
    }
    return table;
  }

  private String amount(Optional<BigDecimal> amount) {
    return amount.map(costs::of).orElse(NONE);
  }
}
