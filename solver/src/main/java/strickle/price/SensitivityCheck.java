package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.plan.Plan;
import strickle.price.Sensitivity.MovingNumber;

/** Finds the numbers that move the profit of a piece, or of all that is ordered, most. */
public final class SensitivityCheck {

  private final Book book;
  private final SensitivityRequest request;
  private final Optional<PlannedMinutes> planned;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Sold> sold = new ArrayList<>();

  /** So many pieces sold in the same way. */
  private record Sold(Deal deal, long quantity, List<Turn> turns) {

    BigDecimal profit() {
      return profitOf(deal);
    }

    BigDecimal profitOf(Deal other) {
      return other.profit().multiply(BigDecimal.valueOf(quantity));
    }
  }

  private SensitivityCheck(Book book, SensitivityRequest request, Optional<Plan> plan) {
    this.book = book;
    this.request = request;
    this.planned = plan.map(one -> PlannedMinutes.of(book, one));
  }

  /**
   * The sensitivity.
   *
   * @param plan a valid plan of this book to take the minutes from; without one they are those of
   *     the typical runs
   * @throws Faulty with {@code .piece} and {@code .channel} for what the book does not have or the
   *     plan does not make, {@code .price} for a piece without a price, the path of an order line
   *     without one, {@code $.orders} when nothing is ordered, and paths that start at the book for
   *     what keeps a casting from being weighed
   */
  public static Sensitivity of(Book book, SensitivityRequest request, Optional<Plan> plan) {
    List<Fault> unweighable = Weighable.faults(book);
    if (!unweighable.isEmpty()) {
      throw new Faulty(unweighable);
    }
    SensitivityCheck check = new SensitivityCheck(book, request, plan);
    check.read();
    if (!check.faults.isEmpty()) {
      throw new Faulty(check.faults);
    }
    return check.answer();
  }

  private void read() {
    Optional<Channel> channel = Named.channel(book, request.channel(), ".channel", faults);
    if (request.piece().isPresent()) {
      Named.piece(book, request.piece().get(), ".piece", faults)
          .ifPresent(piece -> sell(piece, 1, request.price(), channel, ".price"));
    } else if (book.orders().isEmpty()) {
      faults.add(new Fault("$.orders", "an empty list", "an order, or a piece to ask about"));
    } else {
      orders(channel);
    }
  }

  private void orders(Optional<Channel> channel) {
    for (int i = 0; i < book.orders().size(); i++) {
      Order order = book.orders().get(i);
      for (int j = 0; j < order.lines().size(); j++) {
        Line line = order.lines().get(j);
        String path = "$.orders[" + i + "].lines[" + j + "].price";
        sell(book.piece(line.piece()), line.quantity(), line.price(), channel, path);
      }
    }
  }

  private void sell(
      Piece piece,
      long quantity,
      Optional<BigDecimal> own,
      Optional<Channel> channel,
      String path) {
    Optional<BigDecimal> price = own.or(piece::price).filter(amount -> amount.signum() > 0);
    Optional<MinuteSplit> split =
        planned.isPresent()
            ? planned.get().split(piece)
            : Optional.of(new StandardMinutes(book).split(piece));
    if (price.isEmpty()) {
      faults.add(new Fault(path, "no price above 0", "a price there, or of the piece"));
    }
    if (split.isEmpty()) {
      faults.add(RequestCheck.notPlanned(".piece", piece.id()));
    }
    if (price.isPresent() && split.isPresent() && channel.isPresent()) {
      Sale sale = new Sale(channel.get());
      Deal deal = new Deal(PieceModel.of(book, piece), split.get(), sale, price.get());
      sold.add(new Sold(deal, quantity, Turns.of(book, piece, deal)));
    }
  }

  private Sensitivity answer() {
    BigDecimal profit = sold.stream().map(Sold::profit).reduce(BigDecimal.ZERO, BigDecimal::add);
    List<MovingNumber> numbers = new ArrayList<>();
    byNumber().forEach((number, turned) -> numbers.add(moving(number, turned, profit)));
    return new Sensitivity(
        book.studio().currency(),
        planned.isPresent() ? PriceBasis.PLANNED : PriceBasis.STANDARD,
        request.piece(),
        request.channel(),
        request.byPercent(),
        sold.stream().mapToLong(Sold::quantity).sum(),
        Exact.atTheDoor(profit),
        numbers.stream()
            .sorted(Comparator.comparing(MovingNumber::swing).reversed())
            .limit(request.most())
            .toList());
  }

  /** One way in which something sold is turned. */
  private record Turned(Sold sold, Turn turn) {

    BigDecimal change(BigDecimal factor) {
      Deal other = turn.to().apply(turn.times(factor));
      return sold.profitOf(other).subtract(sold.profit());
    }
  }

  /** For every number the deals that rest on it, each with its own way to turn it. */
  private Map<Turn.Name, List<Turned>> byNumber() {
    Map<Turn.Name, List<Turned>> numbers = new LinkedHashMap<>();
    for (Sold one : sold) {
      // Two steps of the same name are turned together already.
      Set<Turn.Name> seen = new HashSet<>();
      for (Turn turn : one.turns()) {
        if (seen.add(turn.name())) {
          numbers
              .computeIfAbsent(turn.name(), number -> new ArrayList<>())
              .add(new Turned(one, turn));
        }
      }
    }
    return numbers;
  }

  private MovingNumber moving(Turn.Name number, List<Turned> turned, BigDecimal profit) {
    BigDecimal by = Exact.fraction(request.byPercent());
    BigDecimal less = BigDecimal.ONE.subtract(by);
    BigDecimal more = BigDecimal.ONE.add(by);
    BigDecimal low = change(turned, less);
    BigDecimal high = change(turned, more);
    // Of several prices of a piece the first is shown.
    Turn first = turned.getFirst().turn();
    return new MovingNumber(
        number.what(),
        number.piece(),
        number.unit(),
        Exact.atTheDoor(first.present()),
        Exact.atTheDoor(first.times(less)),
        Exact.atTheDoor(first.times(more)),
        Exact.atTheDoor(profit.add(low)),
        Exact.atTheDoor(profit.add(high)),
        Exact.atTheDoor(low.abs().max(high.abs())));
  }

  private static BigDecimal change(List<Turned> turned, BigDecimal factor) {
    return turned.stream().map(one -> one.change(factor)).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
