package strickle.price.fair;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Demand;
import strickle.book.Fair;
import strickle.price.fair.Programme.Chosen;

/** Puts what was found into figures that leave the package. */
final class FairResult {

  private static final double HUNDRED = 100;

  private final Book book;
  private final Fair fair;
  private final FairRequest request;
  private final List<Ware> wares;

  FairResult(Book book, Fair fair, FairRequest request, List<Ware> wares) {
    this.book = book;
    this.fair = fair;
    this.request = request;
    this.wares = wares;
  }

  FairBuild build(Means means, Chosen allowed, Trial trial, List<Tightened> tightened) {
    double worth =
        wares.stream()
            .mapToDouble(ware -> ware.worthOf(trial.build().getOrDefault(ware.piece(), 0)))
            .sum();
    double table = fair.tableCost().doubleValue();
    return new FairBuild(
        fair.id(),
        book.studio().currency(),
        trial.plan().from(),
        request.orderingFrom(),
        fair.opens(),
        trial.ready(),
        fair.tableCost(),
        request.budget(),
        packs(means, trial),
        wares.stream().map(ware -> piece(ware, means, allowed, trial)).toList(),
        Earning.rounded(worth - table),
        Earning.rounded(allowed.worth() - table),
        new Earning(book, fair, request, wares, allowed).worths(),
        tightened,
        FairOrders.own(trial.book(), fair),
        trial.plan().totals().weightedLateHours());
  }

  private Optional<BigDecimal> packs(Means means, Trial trial) {
    if (means.moneyLimit().isEmpty()) {
      return Optional.empty();
    }
    return FairBuilding.fixed(means, means.programme(), trial.build())
        .map(chosen -> means.leastPacks(chosen) - means.basePacks())
        .map(Earning::rounded);
  }

  private FairPiece piece(Ware ware, Means means, Chosen allowed, Trial trial) {
    int bring = trial.build().getOrDefault(ware.piece(), 0);
    int item = means.items().indexOf(ware.piece());
    double sold = ware.sold(bring);
    int stock = Math.min(bring, ware.stock());
    double all = bring == 0 ? 1 : ware.chances().atLeast(bring);
    return new FairPiece(
        ware.piece(),
        Wares.price(book, demand(ware)).orElseThrow(),
        Earning.rounded(ware.net()),
        Earning.rounded(ware.cost()),
        Earning.rounded(ware.leftover()),
        ware.unlimited(),
        allowed.levels().get(item).pieces(),
        bring,
        stock,
        bring - stock,
        FairBuilding.at(means.programme().items().get(item), bring).castings(),
        Earning.rounded(sold),
        Earning.rounded(bring - sold),
        Earning.rounded(HUNDRED * all),
        Earning.rounded(ware.worthOf(bring)));
  }

  private Demand demand(Ware ware) {
    return fair.demand().stream()
        .filter(one -> one.piece().equals(ware.piece()))
        .findFirst()
        .orElseThrow();
  }
}
