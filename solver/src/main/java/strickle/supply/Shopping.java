package strickle.supply;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Material;
import strickle.plan.History;
import strickle.plan.Plan;
import strickle.plan.Planning;

/**
 * Works out what to buy for a plan: what it uses, less what is in stock, in whole packs. A pack
 * that is ordered on a day is there when the day begins that lies its lead days later.
 */
public final class Shopping {

  /** A scale shows tenths; less than half of one is rounding. */
  private static final double TOLERANCE = 0.05;

  private final Book book;
  private final OffsetDateTime now;

  /** What began before this has happened: it can be late for nothing any more. */
  private final OffsetDateTime begins;

  private final List<Draw> draws;
  private final List<TooEarly> tooEarly = new ArrayList<>();

  private Shopping(Book book, Plan plan, OffsetDateTime now, Optional<OffsetDateTime> counted) {
    this.book = book;
    this.now = now.atZoneSameInstant(book.studio().timeZone()).toOffsetDateTime();
    this.begins = Planning.begins(plan);
    this.draws =
        Draws.of(book, plan).stream()
            .filter(draw -> counted.isEmpty() || !draw.at().isBefore(counted.get()))
            .toList();
  }

  /**
   * The shopping list of a plan.
   *
   * @param book the book it is a plan of, its stock as it was before the plan began, with what has
   *     been bought since
   * @param now from when on something can be ordered
   */
  public static ShoppingList of(Book book, Plan plan, OffsetDateTime now) {
    return new Shopping(book, plan, now, Optional.empty()).list();
  }

  /**
   * The shopping list of a plan whose stock was counted while it was under way.
   *
   * @param book the book it is a plan of, its stock as counted
   * @param now from when on something can be ordered
   * @param counted when; what began before has left the stock already
   */
  public static ShoppingList counted(
      Book book, Plan plan, OffsetDateTime now, OffsetDateTime counted) {
    return new Shopping(book, plan, now, Optional.of(counted)).list();
  }

  /**
   * From when on the materials of a plan can be ordered when nothing else is said: when it was laid
   * out anew, as it waits for materials, or when it begins.
   */
  public static OffsetDateTime ordering(Plan plan) {
    return plan.history().map(History::now).or(plan::orderingFrom).orElse(plan.from());
  }

  private ShoppingList list() {
    List<Purchase> materials = new ArrayList<>();
    for (Material material : book.materials()) {
      List<Draw> own =
          draws.stream().filter(draw -> draw.material().equals(material.id())).toList();
      if (!own.isEmpty()) {
        materials.add(purchase(material, own));
      }
    }
    // A stable sort: what is enough keeps the order of the book.
    materials.sort(
        Comparator.comparing(
            one -> one.runsOut().map(at -> at.toEpochSecond()).orElse(Long.MAX_VALUE)));
    tooEarly.sort(Comparator.comparing(one -> one.at().toInstant()));
    BigDecimal cost =
        materials.stream().map(Purchase::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    return new ShoppingList(book.studio().currency(), now, materials, cost, tooEarly);
  }

  private Purchase purchase(Material material, List<Draw> own) {
    double needed = own.stream().mapToDouble(Draw::quantity).sum();
    double stock = material.onHand().doubleValue();
    long packs = packs(material, needed - stock);
    BigDecimal bought = material.pack().quantity().multiply(BigDecimal.valueOf(packs));
    Optional<OffsetDateTime> runsOut = look(material, own);
    return new Purchase(
        material.id(),
        tenths(needed),
        material.onHand(),
        packs,
        material.pack().price().multiply(BigDecimal.valueOf(packs)),
        material.onHand().add(bought).subtract(tenths(needed)).max(BigDecimal.ZERO),
        own.get(0).at(),
        runsOut,
        runsOut.map(at -> local(at).minusDays(material.leadDays())),
        arrives(material));
  }

  private static long packs(Material material, double missing) {
    double pack = material.pack().quantity().doubleValue();
    return missing <= TOLERANCE ? 0 : (long) Math.ceil((missing - TOLERANCE) / pack);
  }

  /** When the stock is too little for the first time; notes what begins too early. */
  private Optional<OffsetDateTime> look(Material material, List<Draw> own) {
    double left = material.onHand().doubleValue();
    Optional<OffsetDateTime> runsOut = Optional.empty();
    for (Draw draw : own) {
      left -= draw.quantity();
      if (left < -TOLERANCE) {
        runsOut = runsOut.or(() -> Optional.of(draw.at()));
        note(material, draw, Math.min(-left, draw.quantity()));
      }
    }
    return runsOut;
  }

  private void note(Material material, Draw draw, double missing) {
    LocalDate arrives = arrives(material);
    boolean there =
        material.leadDays() == 0 ? !draw.at().isBefore(now) : !local(draw.at()).isBefore(arrives);
    if (!there && !draw.at().isBefore(begins)) {
      tooEarly.add(new TooEarly(draw.what(), draw.at(), material.id(), tenths(missing), arrives));
    }
  }

  private LocalDate arrives(Material material) {
    return local(now).plusDays(material.leadDays());
  }

  private LocalDate local(OffsetDateTime at) {
    return at.atZoneSameInstant(book.studio().timeZone()).toLocalDate();
  }

  private static BigDecimal tenths(double quantity) {
    return BigDecimal.valueOf(quantity).setScale(1, RoundingMode.HALF_UP);
  }
}
