package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.BundlePrices;
import strickle.price.BundlePrices.BundleChannel;

/** What several pieces bring together at one price. */
final class BundleText {

  private static final Column NUMBER = Column.right(8, 14);

  private BundleText() {}

  /** The lines of it. */
  static List<String> lines(Book book, BundlePrices bundle, CostText costs) {
    String items =
        bundle.items().stream()
            .map(item -> item.quantity() + " " + book.piece(item.piece()).name())
            .collect(Collectors.joining(" and "));
    String off =
        bundle
            .offPercent()
            .map(
                percent ->
                    ", "
                        + TargetText.percent(percent)
                        + " less than one by one ("
                        + costs.of(bundle.separately().orElseThrow())
                        + ")")
            .orElse("");
    String text =
        "Together at "
            + costs.of(bundle.price())
            + off
            + ": "
            + items
            + ". Full cost "
            + costs.of(bundle.full())
            + ", "
            + CostText.tenths(bundle.minutes())
            + " minutes.";
    List<String> lines = new ArrayList<>(Lines.wrap(text, Lines.WIDEST));
    Table table =
        new Table(
            "  ",
            new Column(20, 20, false),
            NUMBER,
            NUMBER,
            NUMBER,
            Column.right(12, 16),
            NUMBER,
            NUMBER);
    table.row("sold by", "net", "profit", "margin", "one by one", "break-even", "suggested");
    for (BundleChannel channel : bundle.channels()) {
      table.row(
          book.channel(channel.channel()).name(),
          costs.of(channel.net()),
          costs.of(channel.profit()),
          TargetText.percent(channel.marginPercent()),
          channel.profitSeparately().map(costs::of).orElse("-"),
          costs.up(channel.breakEven()),
          costs.of(channel.suggested()));
    }
    lines.addAll(table.lines());
    return lines;
  }
}
