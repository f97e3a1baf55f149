package strickle.cli;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.price.PiecePrices;
import strickle.price.PriceRequest;
import strickle.price.Prices;

/** Prices as a page of text. */
final class PriceText {

  private PriceText() {}

  /**
   * The page, with a newline behind each line.
   *
   * @param prices the prices of this book for this request
   */
  static String of(Book book, PriceRequest request, Prices prices) {
    String currency = prices.currency().getCode();
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Lines.wrap(
            book.studio().name() + ": what a good piece costs and what to ask, in " + currency,
            Lines.WIDEST));
    lines.addAll(Lines.wrap(basis(request, prices.currency().getDecimalPlaces()), Lines.WIDEST));
    for (PiecePrices piece : prices.pieces()) {
      lines.add("");
      lines.addAll(PieceText.lines(book, prices, piece));
    }
    if (prices.pieces().isEmpty()) {
      lines.add("");
      lines.add("There are no pieces in the book.");
    }
    return String.join("\n", lines) + "\n";
  }

  private static String basis(PriceRequest request, int decimals) {
    return "Each piece poured in its typical run; suggested prices leave a margin of "
        + request.marginPercent().toPlainString()
        + " % or a little more and end in "
        + request.ending().setScale(decimals, RoundingMode.UNNECESSARY).toPlainString()
        + ".";
  }
}
