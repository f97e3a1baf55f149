package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Piece;
import strickle.price.BundlePrices.BundleChannel;
import strickle.price.BundleRequest.Item;

/** Works out what a bundle costs and brings. */
public final class Bundling {

  private final Book book;
  private final PriceRequest request;
  private final BundleRequest bundle;
  private final Map<Item, UnitCost> costs = new LinkedHashMap<>();

  private Bundling(Book book, PriceRequest request, BundleRequest bundle) {
    this.book = book;
    this.request = request;
    this.bundle = bundle;
  }

  /**
   * The prices of a bundle.
   *
   * @param request the margin wanted and the price ending
   * @param minutes where the minutes of its pieces come from
   * @throws Faulty with {@code .items} for pieces that the book does not have or whose minutes are
   *     not known, and {@code .price} for one with more digits than the currency has
   */
  public static BundlePrices of(
      Book book, PriceRequest request, BundleRequest bundle, MinutesOfPiece minutes) {
    List<Fault> faults = new ArrayList<>(RequestCheck.ofPrice(book, ".price", bundle.price()));
    faults.addAll(RequestCheck.faults(book, request));
    faults.addAll(Weighable.faults(book));
    Bundling bundling = new Bundling(book, request, bundle);
    for (Item item : bundle.items()) {
      Named.piece(book, item.piece(), ".items", faults)
          .ifPresent(piece -> bundling.add(item, piece, minutes, faults));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return bundling.prices();
  }

  private void add(Item item, Piece piece, MinutesOfPiece minutes, List<Fault> faults) {
    Optional<BigDecimal> each = minutes.perGoodPiece(piece);
    if (each.isEmpty()) {
      faults.add(RequestCheck.notPlanned(".items", piece.id()));
    } else if (faults.isEmpty()) {
      costs.put(item, UnitCost.of(book, piece, each.get()));
    }
  }

  private BundlePrices prices() {
    UnitCost cost = UnitCost.of(costs);
    Optional<BigDecimal> separately = separately();
    return new BundlePrices(
        bundle.items(),
        bundle.price(),
        separately,
        separately.filter(all -> all.signum() > 0).map(this::off),
        Exact.atTheDoor(cost.minutes()),
        Exact.atTheDoor(cost.full()),
        book.channels().stream().map(channel -> price(channel, cost)).toList());
  }

  private Optional<BigDecimal> separately() {
    BigDecimal sum = BigDecimal.ZERO;
    for (Item item : bundle.items()) {
      Optional<BigDecimal> price = book.piece(item.piece()).price();
      if (price.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.add(price.get().multiply(BigDecimal.valueOf(item.quantity())));
    }
    return Optional.of(sum);
  }

  private BigDecimal off(BigDecimal separately) {
    BigDecimal less = separately.subtract(bundle.price()).multiply(Exact.HUNDRED);
    return Exact.atTheDoor(Exact.divide(less, separately));
  }

  private BundleChannel price(Channel channel, UnitCost cost) {
    Sale sale = new Sale(channel);
    PriceEnding ending =
        new PriceEnding(request.ending(), request.every(), book.studio().currency());
    return new BundleChannel(
        channel.id(),
        Exact.atTheDoor(sale.net(bundle.price())),
        Exact.atTheDoor(sale.profit(bundle.price(), cost)),
        Exact.atTheDoor(sale.marginPercent(bundle.price(), cost)),
        separately().map(all -> profitSeparately(sale)).map(Exact::atTheDoor),
        Exact.atTheDoor(sale.breakEven(cost)),
        ending.upFrom(sale.priceForMargin(cost, request.marginPercent())));
  }

  private BigDecimal profitSeparately(Sale sale) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Map.Entry<Item, UnitCost> one : costs.entrySet()) {
      BigDecimal price = book.piece(one.getKey().piece()).price().orElseThrow();
      BigDecimal quantity = BigDecimal.valueOf(one.getKey().quantity());
      sum = sum.add(sale.profit(price, one.getValue()).multiply(quantity));
    }
    return sum;
  }
}
