package strickle.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.cli.Table.Column;
import strickle.price.ChannelPrice;
import strickle.price.Discounted;
import strickle.price.Markup;
import strickle.price.PiecePrices;
import strickle.price.PriceRequest;

/** What else a price may go by: a markup, an hourly wage, a shop's share, a discount. */
final class AskText {

  private static final String NONE = "-";
  private static final Column NAME = new Column(20, 20, false);
  private static final Column NUMBER = Column.right(8, 14);

  private final Book book;
  private final PriceRequest request;
  private final CostText costs;

  AskText(Book book, PriceRequest request, CostText costs) {
    this.book = book;
    this.request = request;
    this.costs = costs;
  }

  /** The lines of it for one piece; none when nothing of the kind is asked. */
  List<String> lines(PiecePrices piece) {
    List<String> lines = new ArrayList<>();
    if (request.markupPercent().isPresent() || request.hourly().isPresent()) {
      lines.addAll(asked(piece).lines());
    }
    piece.channels().stream()
        .filter(channel -> channel.wholesale().isPresent())
        .forEach(channel -> lines.addAll(Lines.paragraph("  ", "    ", wholesale(channel))));
    if (piece.channels().stream().anyMatch(channel -> channel.discounted().isPresent())) {
      lines.addAll(discounts(piece).lines());
    }
    return lines;
  }

  private Table asked(PiecePrices piece) {
    Table table = new Table("  ", NAME, Column.right(14, 18), Column.right(14, 18));
    List<String> head = new ArrayList<>(List.of("what to ask"));
    request
        .markupPercent()
        .ifPresent(markup -> head.add("markup " + TargetText.plain(markup) + " %"));
    request.hourly().ifPresent(wage -> head.add(costs.of(wage) + " an hour"));
    table.row(head.toArray(String[]::new));
    for (ChannelPrice channel : piece.channels()) {
      List<String> cells = new ArrayList<>(List.of(book.channel(channel.channel()).name()));
      channel.forMarkup().ifPresent(price -> cells.add(costs.of(price)));
      channel.forHourly().ifPresent(price -> cells.add(costs.of(price)));
      table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  /** A shop's markup is its share of the price on what it pays; 100 % is keystone. */
  private String wholesale(ChannelPrice price) {
    Channel channel = book.channel(price.channel());
    BigDecimal share = channel.discountPercent();
    BigDecimal markup = Markup.ofMargin(share);
    String keystone = markup.compareTo(BigDecimal.valueOf(100)) == 0 ? ", keystone" : "";
    return channel.name()
        + " pays "
        + costs.of(price.wholesale().orElseThrow())
        + " of "
        + costs.of(price.price().orElseThrow())
        + ": a share of "
        + TargetText.plain(share)
        + " %, its markup "
        + CostText.tenths(markup)
        + " %"
        + keystone;
  }

  private Table discounts(PiecePrices piece) {
    Table table = new Table("  ", NAME, NUMBER, NUMBER, NUMBER, NUMBER, Column.right(14, 18));
    String off = TargetText.plain(request.discountPercent().orElseThrow()) + " % off";
    table.row(off, "price", "net", "profit", "margin", "to sell more");
    for (ChannelPrice channel : piece.channels()) {
      Optional<Discounted> found = channel.discounted();
      found.ifPresent(
          it ->
              table.row(
                  book.channel(channel.channel()).name(),
                  costs.of(it.price()),
                  costs.of(it.net()),
                  costs.of(it.profit()),
                  TargetText.percent(it.marginPercent()),
                  it.morePercent().map(TargetText::percent).orElse(NONE)));
    }
    return table;
  }
}
