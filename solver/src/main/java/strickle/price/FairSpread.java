package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Demand;
import strickle.book.Fair;
import strickle.book.Piece;
import strickle.price.FairTable.FairPiece;

/** Spreads the cost of a fair's table; unrounded until the end. */
final class FairSpread {

  private final Book book;
  private final Fair fair;
  private final MinutesOfPiece minutes;
  private final Sale sale;
  private final List<Selling> selling = new ArrayList<>();

  /** One piece at the fair. */
  private record Selling(String piece, BigDecimal expected, BigDecimal price, UnitCost cost) {}

  FairSpread(Book book, Fair fair, MinutesOfPiece minutes) {
    this.book = book;
    this.fair = fair;
    this.minutes = minutes;
    this.sale = new Sale(book.channel(fair.channel()));
  }

  /** The table; every piece has a price and minutes. */
  FairTable table() {
    BigDecimal expected = BigDecimal.ZERO;
    BigDecimal takings = BigDecimal.ZERO;
    BigDecimal net = BigDecimal.ZERO;
    BigDecimal cost = BigDecimal.ZERO;
    for (Demand demand : fair.demand()) {
      Selling one = selling(demand);
      selling.add(one);
      expected = expected.add(one.expected());
      takings = takings.add(one.expected().multiply(sale.revenue(one.price())));
      net = net.add(one.expected().multiply(sale.net(one.price())));
      cost = cost.add(one.expected().multiply(one.cost().full()));
    }
    BigDecimal before = net.subtract(cost);
    return new FairTable(
        fair.id(),
        fair.channel(),
        Exact.atTheDoor(fair.tableCost()),
        Exact.atTheDoor(expected),
        perPiece(expected).map(Exact::atTheDoor),
        Exact.atTheDoor(takings),
        Exact.atTheDoor(before),
        Exact.atTheDoor(before.subtract(fair.tableCost())),
        breakEven(expected, net, cost).map(Exact::atTheDoor),
        pieces(perPiece(expected).orElse(BigDecimal.ZERO)));
  }

  private Selling selling(Demand demand) {
    Piece piece = book.piece(demand.piece());
    UnitCost cost = UnitCost.of(book, piece, minutes.perGoodPiece(piece).orElseThrow());
    BigDecimal price = demand.price().or(piece::price).orElseThrow();
    return new Selling(piece.id(), ExpectedSales.of(demand), price, cost);
  }

  private Optional<BigDecimal> perPiece(BigDecimal expected) {
    return expected.signum() > 0
        ? Optional.of(Exact.divide(fair.tableCost(), expected))
        : Optional.empty();
  }

  private Optional<BigDecimal> breakEven(BigDecimal expected, BigDecimal net, BigDecimal cost) {
    return expected.signum() > 0
        ? BreakEven.units(
            fair.tableCost(), Exact.divide(net, expected), Exact.divide(cost, expected))
        : Optional.empty();
  }

  private List<FairPiece> pieces(BigDecimal perPiece) {
    return selling.stream()
        .map(
            one -> {
              BigDecimal profit = sale.profit(one.price(), one.cost());
              return new FairPiece(
                  one.piece(),
                  Exact.atTheDoor(one.expected()),
                  one.price(),
                  Exact.atTheDoor(sale.net(one.price())),
                  Exact.atTheDoor(one.cost().full()),
                  Exact.atTheDoor(profit),
                  Exact.atTheDoor(profit.subtract(perPiece)));
            })
        .toList();
  }
}
