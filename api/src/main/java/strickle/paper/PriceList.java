package strickle.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Piece;

/**
 * The list prices of a book's pieces, for a table or to hand out. What a piece costs the maker is
 * nobody's business and not on it. A channel with a discount has its own prices beside them: list
 * price x (1 − discount/100), rounded to the currency's digits, halves up.
 */
public final class PriceList {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final String UNPRICED = "on request";

  private final Book book;
  private final Optional<Channel> channel;

  private PriceList(Book book, Optional<String> channel) {
    this.book = book;
    this.channel = channel.map(book::channel);
  }

  /**
   * The list as a PDF with its fonts inside. The same book and day give the same bytes.
   *
   * @param channel id of the channel whose prices stand beside the list prices, if it has a
   *     discount
   * @param day the day that is printed on it
   * @throws IllegalArgumentException when the channel is not in the book
   */
  public static byte[] pdf(Book book, Optional<String> channel, LocalDate day, PageSize size) {
    PriceList list = new PriceList(book, channel);
    Markup body = new Markup();
    list.write(body, day);
    String title = book.studio().name() + ": prices";
    return Pdf.of(title, size, day.atStartOfDay(ZoneOffset.UTC).toInstant(), body);
  }

  /**
   * The list as CSV (RFC 4180) with a first line of names. A piece without a price has empty cells.
   *
   * @param channel as for the PDF
   * @throws IllegalArgumentException when the channel is not in the book
   */
  public static String csv(Book book, Optional<String> channel) {
    PriceList list = new PriceList(book, channel);
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("piece", "name", "mix", "currency", "price", "channelPrice"));
    String currency = book.studio().currency().getCode();
    for (Piece piece : book.pieces()) {
      String listed = list.listed(piece).orElse("");
      String own = list.own(piece).orElse("");
      String mix = book.mix(piece.mix()).name();
      rows.add(List.of(piece.id(), piece.name(), mix, currency, listed, own));
    }
    return CsvText.write(rows);
  }

  private void write(Markup body, LocalDate day) {
    String studio = book.studio().name();
    body.leaf("div", "foot", studio + " · prices of " + Times.day(day));
    body.leaf("div", "day", studio);
    body.leaf("div", "who", channel.map(to -> "Prices, " + to.name()).orElse("Prices"));
    String currency = book.studio().currency().getCode();
    body.leaf("div", "studio", Times.day(day) + ", in " + currency + " for each piece");
    if (book.pieces().isEmpty()) {
      body.leaf("p", "note", "There is nothing for sale yet.");
      return;
    }
    body.open("table", "list");
    head(body);
    book.pieces().forEach(piece -> row(body, piece));
    body.close();
  }

  private void head(Markup body) {
    body.open("tr", "").leaf("th", "", "piece").leaf("th", "", "mix");
    body.leaf("th", "head", "list price");
    channel.filter(PriceList::isCheaper).ifPresent(to -> body.leaf("th", "head", "your price"));
    body.close();
  }

  private void row(Markup body, Piece piece) {
    body.open("tr", "").leaf("td", "", piece.name());
    body.leaf("td", "", book.mix(piece.mix()).name());
    body.leaf("td", "amount", listed(piece).orElse(UNPRICED));
    if (channel.filter(PriceList::isCheaper).isPresent()) {
      body.leaf("td", "amount", own(piece).orElse(UNPRICED));
    }
    body.close();
  }

  private static boolean isCheaper(Channel channel) {
    return channel.discountPercent().signum() > 0;
  }

  private Optional<String> listed(Piece piece) {
    return piece.price().map(this::money);
  }

  private Optional<String> own(Piece piece) {
    BigDecimal off = channel.map(Channel::discountPercent).orElse(BigDecimal.ZERO);
    BigDecimal left = HUNDRED.subtract(off).movePointLeft(2);
    return piece.price().map(left::multiply).map(this::money);
  }

  private String money(BigDecimal amount) {
    int digits = Math.max(0, book.studio().currency().getDecimalPlaces());
    return amount.setScale(digits, RoundingMode.HALF_UP).toPlainString();
  }
}
