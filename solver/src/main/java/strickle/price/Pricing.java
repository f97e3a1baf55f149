package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Piece;
import strickle.plan.Plan;

/** Works out what every piece of a book costs and what to ask for it in every channel. */
public final class Pricing {

  private final Book book;
  private final PriceRequest request;
  private final PriceEnding ending;

  private Pricing(Book book, PriceRequest request) {
    this.book = book;
    this.request = request;
    this.ending = new PriceEnding(request.ending(), request.every(), book.studio().currency());
  }

  /**
   * The prices by each piece's typical run, poured as a lot of its own.
   *
   * @param book the studio book
   * @param request the margin wanted and the price ending
   * @throws Faulty with {@code .marginPercent} for each channel whose fee leaves no room for the
   *     margin, {@code .ending} when the ending has more digits than the currency, and paths that
   *     start at the book ({@code $.moulds[0].shape}) for what keeps a casting from being weighed
   * @throws IllegalStateException when a mould's mesh has not been measured
   */
  public static Prices standard(Book book, PriceRequest request) {
    return of(book, request, new StandardMinutes(book));
  }

  /**
   * The prices by the lots of a plan, each piece compared with its typical run. Pieces that the
   * plan makes no good one of are left out.
   *
   * @param plan a valid plan of this book; it may be under way
   * @throws Faulty as {@link #standard} does
   * @throws IllegalStateException when a mould's mesh has not been measured
   */
  public static Prices planned(Book book, PriceRequest request, Plan plan) {
    Objects.requireNonNull(book, "book");
    Objects.requireNonNull(request, "request");
    refuse(book, request);
    PlannedMinutes minutes = PlannedMinutes.of(book, plan);
    Prices prices = of(book, request, minutes);
    List<PiecePrices> compared =
        prices.pieces().stream().map(priced -> compared(book, minutes, priced)).toList();
    PlanCost cost = PlanCost.of(book, minutes);
    return new Prices(
        prices.currency(),
        prices.basis(),
        compared,
        Optional.of(cost),
        Optional.empty(),
        Optional.empty());
  }

  private static PiecePrices compared(Book book, PlannedMinutes minutes, PiecePrices priced) {
    Piece piece = book.piece(priced.piece());
    MinuteSplit planned = minutes.split(piece).orElseThrow();
    return priced.with(Comparing.of(book, piece, minutes, planned));
  }

  /**
   * The prices by the minutes of any source.
   *
   * @param book the studio book
   * @param request the margin wanted and the price ending
   * @param minutes the attended minutes of each piece; pieces it does not know are left out
   * @throws Faulty as {@link #standard} does
   * @throws IllegalStateException when a mould's mesh has not been measured
   */
  public static Prices of(Book book, PriceRequest request, MinutesOfPiece minutes) {
    Objects.requireNonNull(book, "book");
    Objects.requireNonNull(request, "request");
    refuse(book, request);
    Pricing pricing = new Pricing(book, request);
    List<PiecePrices> pieces =
        book.pieces().stream().flatMap(piece -> pricing.price(piece, minutes)).toList();
    return new Prices(book.studio().currency(), minutes.basis(), pieces);
  }

  private static void refuse(Book book, PriceRequest request) {
    List<Fault> faults = new ArrayList<>(RequestCheck.faults(book, request));
    faults.addAll(Weighable.faults(book));
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private Stream<PiecePrices> price(Piece piece, MinutesOfPiece minutes) {
    return minutes.perGoodPiece(piece).stream()
        .map(each -> price(piece, UnitCost.of(book, piece, each)));
  }

  private PiecePrices price(Piece piece, UnitCost cost) {
    return new PiecePrices(
        piece.id(),
        Exact.atTheDoor(cost.minutes()),
        Exact.atTheDoor(cost.of(CostKind.MATERIAL)),
        Exact.atTheDoor(cost.of(CostKind.LABOUR)),
        Exact.atTheDoor(cost.of(CostKind.WEAR)),
        Exact.atTheDoor(cost.of(CostKind.OVERHEAD)),
        Exact.atTheDoor(cost.full()),
        lines(cost),
        book.channels().stream().map(channel -> price(piece, cost, new Sale(channel))).toList());
  }

  private static List<CostLine> lines(UnitCost cost) {
    List<BigDecimal> amounts =
        LargestRemainder.round(cost.lines().stream().map(ExactLine::amount).toList());
    List<CostLine> lines = new ArrayList<>();
    for (int i = 0; i < amounts.size(); i++) {
      ExactLine exact = cost.lines().get(i);
      lines.add(new CostLine(exact.what(), exact.kind(), amounts.get(i)));
    }
    return lines;
  }

  private ChannelPrice price(Piece piece, UnitCost cost, Sale sale) {
    Optional<BigDecimal> price = piece.price();
    Optional<BigDecimal> real = price.filter(p -> p.signum() > 0);
    boolean takesTime = cost.minutes().signum() > 0;
    return new ChannelPrice(
        sale.channel().id(),
        price,
        price.map(sale::net).map(Exact::atTheDoor),
        price.map(p -> sale.profit(p, cost)).map(Exact::atTheDoor),
        real.map(p -> sale.marginPercent(p, cost)).map(Exact::atTheDoor),
        price.filter(p -> takesTime).map(p -> sale.earnedPerHour(p, cost)).map(Exact::atTheDoor),
        Exact.atTheDoor(sale.breakEven(cost)),
        ending.upFrom(sale.priceForMargin(cost, request.marginPercent())),
        price.filter(p -> sale.isToAShop()).map(sale::revenue).map(Exact::atTheDoor),
        request.markupPercent().map(markup -> ending.upFrom(sale.priceForMarkup(cost, markup))),
        request.hourly().map(wage -> ending.upFrom(sale.priceForHourly(cost, wage))),
        request.discountPercent().flatMap(off -> real.map(p -> Discounted.of(off, p, sale, cost))));
  }
}
