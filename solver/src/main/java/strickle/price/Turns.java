package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Piece;
import strickle.price.Turn.Name;

/** Finds every number that a deal rests on. */
final class Turns {

  private static final String PERCENT = "%";

  /** Some of a price is always left. */
  private static final Optional<BigDecimal> NEARLY_ALL = Optional.of(new BigDecimal("99.9999"));

  private final Book book;
  private final Piece piece;
  private final Deal deal;
  private final String currency;
  private final List<Turn> turns = new ArrayList<>();

  private Turns(Book book, Piece piece, Deal deal) {
    this.book = book;
    this.piece = piece;
    this.deal = deal;
    this.currency = book.studio().currency().getCode();
  }

  /** The numbers of a deal; none that are 0, as those cannot be turned. */
  static List<Turn> of(Book book, Piece piece, Deal deal) {
    Turns turns = new Turns(book, piece, deal);
    turns.rates();
    turns.sale();
    turns.ofPiece();
    turns.materials();
    turns.forms();
    turns.minutes();
    return turns.turns;
  }

  private void rates() {
    HourRates r = deal.model().rates();
    shared(
        "wage",
        currency + "/h",
        r.wagePerHour(),
        wage -> rates(wage, r.overheadPerMonth(), r.productiveHoursPerMonth()));
    shared(
        "overhead",
        currency + "/month",
        r.overheadPerMonth(),
        overhead -> rates(r.wagePerHour(), overhead, r.productiveHoursPerMonth()));
    shared(
        "productive hours",
        "h/month",
        r.productiveHoursPerMonth(),
        hours -> rates(r.wagePerHour(), r.overheadPerMonth(), hours));
  }

  private Deal rates(BigDecimal wage, BigDecimal overhead, BigDecimal hours) {
    return deal.with(deal.model().withRates(new HourRates(wage, overhead, hours)));
  }

  private void sale() {
    Sale sale = deal.sale();
    Channel channel = sale.channel();
    add(
        named("percent fee", PERCENT),
        channel.percentFee(),
        NEARLY_ALL,
        fee -> deal.with(sale.withFee(fee)));
    add(
        named("discount", PERCENT),
        channel.discountPercent(),
        NEARLY_ALL,
        off -> deal.with(sale.withDiscount(off)));
    shared("fixed fee", currency, channel.fixedFee(), fee -> deal.with(sale.withFixedFee(fee)));
  }

  private void ofPiece() {
    add(own("price", currency), deal.price(), Optional.empty(), deal::at);
    BigDecimal good = deal.model().goodShare().multiply(Exact.HUNDRED);
    add(
        own("good share", PERCENT),
        good,
        Optional.of(Exact.HUNDRED),
        percent -> deal.withGoodShare(Exact.fraction(percent)));
    BigDecimal mix = deal.model().mixKilograms(book, piece);
    add(
        own("mix in a good piece", "kg"),
        mix,
        Optional.empty(),
        kilograms -> mixed(Exact.divide(kilograms, mix)));
    BigDecimal run =
        Exact.divide(
            BigDecimal.valueOf(deal.minutes().castings()),
            BigDecimal.valueOf(deal.minutes().runs()));
    add(own("run size", "castings"), run, Optional.empty(), size -> inRunsOf(run, size));
  }

  private Deal mixed(BigDecimal factor) {
    return deal.with(
        deal.model()
            .withMaterials(
                deal.model().materials().stream()
                    .map(need -> need.withMix(need.mix().multiply(factor)))
                    .toList()));
  }

  private Deal inRunsOf(BigDecimal before, BigDecimal after) {
    BigDecimal factor = Exact.divide(before, after);
    return timed(item -> item.kind() == MinuteKind.LOT || item.kind() == MinuteKind.SETUP, factor);
  }

  private void materials() {
    for (MaterialNeed need : deal.model().materials()) {
      shared(
          need.what() + ", a pack",
          currency,
          need.packPrice(),
          price -> bought(other -> other.equals(need) ? other.at(price) : other));
    }
  }

  private Deal bought(UnaryOperator<MaterialNeed> change) {
    return deal.with(
        deal.model().withMaterials(deal.model().materials().stream().map(change).toList()));
  }

  private void forms() {
    for (FormNeed need : deal.model().forms()) {
      // Not by its name: two things may be called alike.
      Predicate<FormNeed> same = need::equals;
      shared(
          need.what() + ", cost of a set",
          currency,
          need.bought(),
          cost -> worn(other -> same.test(other) ? other.costing(cost) : other));
      shared(
          need.what() + ", life",
          "castings",
          need.lifeCastings(),
          life -> worn(other -> same.test(other) ? other.lasting(life) : other));
    }
  }

  private Deal worn(UnaryOperator<FormNeed> change) {
    return deal.with(deal.model().withForms(deal.model().forms().stream().map(change).toList()));
  }

  private void minutes() {
    for (MinuteItem item : deal.minutes().items()) {
      if (item.minutes().signum() > 0) {
        Predicate<MinuteItem> same = other -> other.what().equals(item.what());
        BigDecimal all =
            deal.minutes().items().stream()
                .filter(same)
                .map(MinuteItem::minutes)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal each = Exact.divide(all, deal.minutes().good());
        add(
            own(item.what(), "min a good piece"),
            each,
            Optional.empty(),
            minutes -> timed(same, Exact.divide(minutes, each)));
      }
    }
  }

  private Deal timed(Predicate<MinuteItem> which, BigDecimal factor) {
    return deal.with(
        deal.minutes()
            .withItems(
                deal.minutes().items().stream()
                    .map(item -> which.test(item) ? item.times(factor) : item)
                    .toList()));
  }

  private Name own(String what, String unit) {
    return new Name(what, Optional.of(piece.id()), unit);
  }

  private static Name named(String what, String unit) {
    return new Name(what, Optional.empty(), unit);
  }

  private void shared(String what, String unit, BigDecimal present, Function<BigDecimal, Deal> to) {
    add(named(what, unit), present, Optional.empty(), to);
  }

  private void add(
      Name name, BigDecimal present, Optional<BigDecimal> most, Function<BigDecimal, Deal> to) {
    if (present.signum() > 0) {
      turns.add(new Turn(name, present, most, to));
    }
  }
}
