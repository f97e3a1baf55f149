package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.price.PiecePrices;
import strickle.price.PriceBasis;
import strickle.price.PriceRequest;
import strickle.price.Prices;

/** Prices as a page of text. */
final class PriceText {

  private PriceText() {}

  /**
   * The page, with a newline behind each line.
   *
   * @param prices the prices of this book for this request
   * @param each whether every line of a cost is told where there is nothing to compare it with
   */
  static String of(Book book, PriceRequest request, Prices prices, boolean each) {
    String currency = prices.currency().getCode();
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Lines.wrap(
            book.studio().name() + ": what a good piece costs and what to ask, in " + currency,
            Lines.WIDEST));
    lines.addAll(Lines.wrap(basis(request, prices), Lines.WIDEST));
    for (PiecePrices piece : prices.pieces()) {
      lines.add("");
      lines.addAll(PieceText.lines(book, request, prices, piece, each));
    }
    if (prices.pieces().isEmpty()) {
      lines.add("");
      lines.add(none(prices.basis()));
    }
    prices.bundle().ifPresent(one -> add(lines, BundleText.lines(book, one, costs(prices))));
    prices.fair().ifPresent(one -> add(lines, FairTableText.lines(book, one, costs(prices))));
    prices.plan().ifPresent(cost -> add(lines, PlanCostText.lines(book, cost, costs(prices))));
    return String.join("\n", lines) + "\n";
  }

  private static void add(List<String> lines, List<String> more) {
    lines.add("");
    lines.addAll(more);
  }

  private static CostText costs(Prices prices) {
    return CostText.in(prices.currency());
  }

  private static String none(PriceBasis basis) {
    return basis == PriceBasis.STANDARD
        ? "There are no pieces in the book."
        : "The plan makes no good pieces.";
  }

  private static String basis(PriceRequest request, Prices prices) {
    String minutes =
        prices.basis() == PriceBasis.STANDARD
            ? "Each piece poured in its typical run"
            : "Each piece as planned, what a lot takes together split by wet mass";
    int decimals = prices.currency().getDecimalPlaces();
    return minutes
        + "; suggested prices leave a margin of "
        + request.marginPercent().toPlainString()
        + " % or a little more and end in "
        + request.ending().setScale(decimals, RoundingMode.UNNECESSARY).toPlainString()
        + (request.every().compareTo(BigDecimal.ONE) == 0
            ? "."
            : ", every " + TargetText.plain(request.every()) + ".");
  }
}
