package strickle.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import strickle.book.Book;
import strickle.book.Piece;

/** Turns every lever of a deal alone until the margin wanted just holds. */
final class Levers {

  private static final String PERCENT = "%";
  private static final String CASTINGS = "castings";
  private static final BigDecimal NONE = BigDecimal.ZERO;

  private final Book book;
  private final Piece piece;
  private final Deal deal;
  private final BigDecimal wanted;
  private final UnitCost cost;

  /** How far the cost may rise, or below 0 has to fall, for the margin to just hold. */
  private final BigDecimal gap;

  Levers(Book book, Piece piece, Deal deal, TargetRequest request) {
    this.book = book;
    this.piece = piece;
    this.deal = deal;
    this.wanted = request.marginPercent();
    this.cost = deal.cost();
    this.gap = deal.mostCost(wanted).subtract(cost.full());
  }

  CurrencyUnit currency() {
    return book.studio().currency();
  }

  /** Whether a deal has the margin wanted, but for the rounding of masses. */
  boolean holds(Deal other) {
    BigDecimal room = other.mostCost(wanted).subtract(other.cost().full());
    return Exact.meant(room).signum() >= 0;
  }

  /** Every lever, the maker's own before the buyer's. */
  List<Lever> all() {
    List<Lever> levers = new ArrayList<>();
    levers.add(minutes());
    levers.add(new RunSizes(book, piece, deal, this::holds).lever());
    levers.add(goodShare());
    levers.add(mixCost());
    levers.add(mouldLife());
    levers.add(channelFee());
    if (deal.sale().channel().discountPercent().signum() > 0) {
      levers.add(shopShare());
    }
    levers.add(price());
    return levers;
  }

  /** Run size by minutes. */
  LeverTable table() {
    return new RunSizes(book, piece, deal, this::holds).table();
  }

  private Lever minutes() {
    BigDecimal perMinute = deal.model().rates().perMinute();
    Deal without = deal.with(deal.minutes().withItems(List.of()));
    return lever(
        LeverKind.MINUTES,
        "min",
        cost.minutes(),
        perMinute.signum() == 0
            ? Optional.empty()
            : closing(cost.minutes().add(Exact.divide(gap, perMinute)), RoundingMode.FLOOR),
        Optional.of(NONE),
        Optional.of(without),
        perMinute.signum() == 0 ? "minutes cost nothing" : "");
  }

  /** Everything but the packing is paid for pieces started: S/g + packing = most cost. */
  private Lever goodShare() {
    BigDecimal packing =
        deal.model().materials().stream()
            .map(MaterialNeed::packingCost)
            .reduce(NONE, BigDecimal::add);
    BigDecimal started = cost.full().subtract(packing).multiply(deal.model().goodShare());
    BigDecimal most = cost.full().add(gap).subtract(packing);
    Optional<BigDecimal> closing = Optional.empty();
    if (most.signum() > 0) {
      BigDecimal percent = Exact.divide(started.multiply(Exact.HUNDRED), most);
      closing = closing(percent, RoundingMode.CEILING).filter(g -> g.compareTo(Exact.HUNDRED) <= 0);
    }
    return lever(
        LeverKind.GOOD_SHARE,
        PERCENT,
        deal.model().goodShare().multiply(Exact.HUNDRED),
        closing,
        Optional.of(Exact.HUNDRED),
        Optional.of(deal.withGoodShare(BigDecimal.ONE)),
        "");
  }

  private Lever mixCost() {
    List<MaterialNeed> needs = deal.model().materials();
    List<MaterialNeed> free = needs.stream().map(need -> need.withMix(NONE)).toList();
    Deal without = deal.with(deal.model().withMaterials(free));
    BigDecimal mix = cost.full().subtract(without.cost().full());
    BigDecimal kilograms = deal.model().mixKilograms(book, piece);
    boolean matters = mix.signum() > 0;
    return lever(
        LeverKind.MIX_COST,
        currency().getCode() + "/kg",
        Exact.divide(mix, kilograms),
        matters
            ? closing(Exact.divide(mix.add(gap), kilograms), RoundingMode.FLOOR)
            : Optional.empty(),
        Optional.of(NONE),
        Optional.of(without),
        matters ? "" : "the mix costs nothing");
  }

  private Lever mouldLife() {
    BigDecimal wear = cost.of(CostKind.WEAR);
    BigDecimal shortest =
        deal.model().forms().stream()
            .map(FormNeed::lifeCastings)
            .reduce(BigDecimal::min)
            .orElse(NONE);
    boolean matters = wear.signum() > 0;
    BigDecimal allowed = wear.add(gap);
    Optional<BigDecimal> closing =
        matters && allowed.signum() > 0
            ? Optional.of(
                Exact.divide(shortest.multiply(wear), allowed).setScale(0, RoundingMode.CEILING))
            : Optional.empty();
    Deal without = deal.with(deal.model().withForms(List.of()));
    return lever(
        LeverKind.MOULD_LIFE,
        CASTINGS,
        shortest,
        closing,
        Optional.empty(),
        Optional.of(without),
        matters ? "" : "the forms cost nothing");
  }

  /** f = 1 − m − (cost + k) / (P(1 − d)). */
  private Lever channelFee() {
    Sale sale = deal.sale();
    BigDecimal more = Exact.divide(gap.multiply(Exact.HUNDRED), sale.revenue(deal.price()));
    BigDecimal present = sale.channel().percentFee();
    return lever(
        LeverKind.CHANNEL_FEE,
        PERCENT,
        present,
        closing(present.add(more), RoundingMode.FLOOR),
        Optional.of(NONE),
        Optional.of(deal.with(sale.withFee(NONE))),
        present.signum() == 0 && gap.signum() < 0 ? "there is no percent fee" : "");
  }

  /** d = 1 − (cost + k) / (P(1 − f − m)). */
  private Lever shopShare() {
    Sale sale = deal.sale();
    BigDecimal kept = Exact.remainder(sale.channel().percentFee().add(wanted));
    BigDecimal needed = cost.full().add(sale.channel().fixedFee());
    BigDecimal paid = Exact.divide(needed.multiply(Exact.HUNDRED), deal.price().multiply(kept));
    return lever(
        LeverKind.SHOP_SHARE,
        PERCENT,
        sale.channel().discountPercent(),
        closing(Exact.HUNDRED.subtract(paid), RoundingMode.FLOOR),
        Optional.of(NONE),
        Optional.of(deal.with(sale.withDiscount(NONE))),
        "");
  }

  private Lever price() {
    int decimals = currency().getDecimalPlaces();
    BigDecimal price =
        Exact.meant(deal.sale().priceForMargin(cost, wanted))
            .setScale(decimals, RoundingMode.CEILING);
    return lever(
        LeverKind.PRICE,
        currency().getCode(),
        deal.price(),
        Optional.of(price),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  /** To four decimals, rounded to the side on which the margin still holds; never below 0. */
  private static Optional<BigDecimal> closing(BigDecimal value, RoundingMode safe) {
    return Optional.of(Exact.meant(value).setScale(Exact.DECIMALS, safe))
        .filter(rounded -> rounded.signum() >= 0);
  }

  private static Lever lever(
      LeverKind kind,
      String unit,
      BigDecimal present,
      Optional<BigDecimal> closing,
      Optional<BigDecimal> limit,
      Optional<Deal> atLimit,
      String note) {
    return new Lever(
        kind,
        unit,
        Exact.atTheDoor(present),
        closing,
        limit,
        atLimit.map(Deal::marginPercent).map(Exact::atTheDoor),
        note.isEmpty() ? Optional.empty() : Optional.of(note));
  }
}
