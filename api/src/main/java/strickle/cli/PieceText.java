package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.ChannelPrice;
import strickle.price.PiecePrices;
import strickle.price.Prices;

/** What one piece costs and, for each channel, what it brings and what to ask. */
final class PieceText {

  private static final String NONE = "-";

  /** Wide enough for four-digit prices, so that the tables of most studios look alike. */
  private static final int LEAST = 8;

  private static final int MOST = 14;

  private static final int CHANNEL = 20;

  private final Book book;
  private final int decimals;

  private PieceText(Book book, Prices prices) {
    this.book = book;
    this.decimals = prices.currency().getDecimalPlaces();
  }

  /** The lines of it. */
  static List<String> lines(Book book, Prices prices, PiecePrices piece) {
    PieceText text = new PieceText(book, prices);
    List<String> lines = new ArrayList<>();
    lines.addAll(Lines.wrap(book.piece(piece.piece()).name(), Lines.WIDEST));
    lines.addAll(text.cost(piece).lines());
    if (!piece.channels().isEmpty()) {
      lines.addAll(text.channels(piece).lines());
    }
    return lines;
  }

  private Table cost(PiecePrices piece) {
    Column number = Column.right(LEAST, MOST);
    return new Table("  ", number, number, number, number, number, number)
        .row("minutes", "material", "labour", "wear", "overhead", "full cost")
        .row(
            tenths(piece.minutes()),
            amount(piece.material()),
            amount(piece.labour()),
            amount(piece.wear()),
            amount(piece.overhead()),
            amount(piece.full()));
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
          channel.marginPercent().map(percent -> tenths(percent) + " %").orElse(NONE),
          amount(channel.earnedPerHour()),
          amount(channel.breakEven().setScale(decimals, RoundingMode.CEILING)),
          amount(channel.suggested()));
    }
    return table;
  }

  private String amount(Optional<BigDecimal> amount) {
    return amount.map(this::amount).orElse(NONE);
  }

  private String amount(BigDecimal amount) {
    return amount.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static String tenths(BigDecimal number) {
    return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
