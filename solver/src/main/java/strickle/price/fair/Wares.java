package strickle.price.fair;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Demand;
import strickle.book.Fair;
import strickle.book.Fault;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.price.PiecePrices;
import strickle.price.PriceRequest;
import strickle.price.Pricing;
import strickle.price.Sale;

/**
 * The pieces of a fair with their money. Variable cost is material, labour and wear of the standard
 * cost; overhead is paid whatever is brought.
 */
final class Wares {

  /** Who would plan for more of one piece for one fair has mistyped it. */
  private static final int MOST_DEMAND = 5_000;

  private final Book book;
  private final Fair fair;
  private final String path;
  private final List<Fault> faults = new ArrayList<>();

  private Wares(Book book, Fair fair) {
    this.book = book;
    this.fair = fair;
    this.path = "$.fairs[" + book.fairs().indexOf(fair) + "]";
  }

  /** What is wrong with a fair's demand, paths starting at the book. */
  static List<Fault> faults(Book book, Fair fair) {
    Wares wares = new Wares(book, fair);
    wares.check();
    return List.copyOf(wares.faults);
  }

  /**
   * The pieces, in the order of the fair's demand.
   *
   * @param book one without the fair's own orders
   */
  static List<Ware> of(Book book, Fair fair) {
    return new Wares(book, fair).wares();
  }

  /** The price asked at the fair: the demand's, or the piece's own. */
  static Optional<BigDecimal> price(Book book, Demand demand) {
    return demand.price().or(() -> book.piece(demand.piece()).price());
  }

  /** Pieces that orders due by the opening ask for. */
  static long askedBefore(Book book, Fair fair, String piece) {
    return book.orders().stream()
        .filter(order -> !order.due().isAfter(fair.opens()))
        .map(Order::lines)
        .flatMap(List::stream)
        .filter(line -> line.piece().equals(piece))
        .mapToLong(Line::quantity)
        .sum();
  }

  private void check() {
    if (fair.demand().isEmpty()) {
      faults.add(new Fault(path + ".demand", "an empty list", "at least one piece that may sell"));
    }
    for (int i = 0; i < fair.demand().size(); i++) {
      check(path + ".demand[" + i + "]", fair.demand().get(i));
    }
  }

  private void check(String at, Demand demand) {
    if (demand.high() > MOST_DEMAND) {
      faults.add(new Fault(at + ".high", "" + demand.high(), "at most " + MOST_DEMAND));
    }
    Optional<BigDecimal> price = price(book, demand);
    if (price.isEmpty()) {
      String right = "what it is to cost at the fair, here or as the price of the piece";
      faults.add(new Fault(at + ".price", "nothing", right));
      return;
    }
    BigDecimal net = new Sale(book.channel(fair.channel())).net(price.get());
    BigDecimal leftover = book.piece(demand.piece()).leftoverValue().orElse(BigDecimal.ZERO);
    if (leftover.compareTo(net) > 0) {
      faults.add(leaves(at, price.get(), net, leftover));
    }
  }

  private Fault leaves(String at, BigDecimal price, BigDecimal net, BigDecimal leftover) {
    String found =
        price.toPlainString()
            + ", of which \""
            + fair.channel()
            + "\" leaves "
            + net.stripTrailingZeros().toPlainString();
    String right =
        "a price that leaves at least the "
            + leftover.toPlainString()
            + " a piece is worth unsold (leftoverValue), or no place in the demand";
    return new Fault(at + ".price", found, right);
  }

  private List<Ware> wares() {
    Map<String, PiecePrices> costs = new HashMap<>();
    PriceRequest nothing = new PriceRequest(BigDecimal.ZERO, BigDecimal.ZERO);
    Pricing.standard(book, nothing).pieces().forEach(one -> costs.put(one.piece(), one));
    return fair.demand().stream().map(demand -> ware(demand, costs.get(demand.piece()))).toList();
  }

  private Ware ware(Demand demand, PiecePrices cost) {
    Piece piece = book.piece(demand.piece());
    BigDecimal net = new Sale(book.channel(fair.channel())).net(price(book, demand).orElseThrow());
    BigDecimal variable = cost.material().add(cost.labour()).add(cost.wear());
    long stock = Math.max(0, piece.onHand() - askedBefore(book, fair, piece.id()));
    return new Ware(
        piece.id(),
        Triangle.of(demand),
        demand.high(),
        (int) stock,
        net.doubleValue(),
        piece.leftoverValue().orElse(BigDecimal.ZERO).doubleValue(),
        variable.doubleValue());
  }
}
