package strickle.plan;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.plan.Bounds.OrderBound;
import strickle.plan.bound.ShopBound;
import strickle.shop.Due;

/**
 * Works out what no plan of a book can beat. Pins are not looked at; they cost, or cost nothing.
 */
public final class Bounding {

  private final Book book;
  private final StudioTime time;
  private final Cover cover;
  private final StudioShop studio;

  private Bounding(Book book, OffsetDateTime from, Cover cover) {
    this.book = book;
    this.cover = cover;
    this.time = new StudioTime(from.toInstant(), book.studio().timeZone());
    int horizon = Planning.horizon(book, time);
    this.studio = Compiler.compile(book, time, horizon, Needs.of(book, cover), List.of());
  }

  /**
   * The bounds of a book.
   *
   * @param book one that {@link Planning#faults} finds nothing in
   * @param from the first moment that may be planned
   */
  public static Bounds of(Book book, OffsetDateTime from, Cover cover) {
    return new Bounding(book, from, cover).bounds();
  }

  /**
   * The bounds of all plans that a plan could have been, or could still become where it is under
   * way.
   *
   * @param plan a plan of the book that the audit finds nothing in
   */
  public static Bounds of(Book book, Plan plan) {
    return plan.history().isPresent()
        ? rest(book, plan).bounds()
        : of(book, plan.from(), Cover.of(plan.coverPercent()));
  }

  /** The fewest weighted late hours of such a plan. */
  public static BigDecimal lateHours(Book book, Plan plan) {
    return plan.history().isPresent()
        ? rest(book, plan).lateHours()
        : lateHours(book, plan.from(), Cover.of(plan.coverPercent()));
  }

  /** The least attended minutes of such a plan. */
  public static long attendedMinutes(Book book, Plan plan) {
    return plan.history().isPresent()
        ? rest(book, plan).attendedMinutes()
        : attendedMinutes(book, plan.from(), Cover.of(plan.coverPercent()));
  }

  private static RestBounding rest(Book book, Plan plan) {
    return new RestBounding(RestPlanning.standing(book, plan));
  }

  /** The fewest weighted late hours alone; a plan that is nowhere late need not ask. */
  public static BigDecimal lateHours(Book book, OffsetDateTime from, Cover cover) {
    Bounding bounding = new Bounding(book, from, cover);
    return bounding.late(new ShopBound(bounding.studio.shop()));
  }

  /** The least attended minutes alone, which takes next to no time. */
  public static long attendedMinutes(Book book, OffsetDateTime from, Cover cover) {
    return ShopBound.attended(new Bounding(book, from, cover).studio.shop());
  }

  /**
   * When an order is ready in a plan of nothing else, all that is on hand its own.
   *
   * @param request from where on, and how long and from where to search; one that begins from a
   *     plan under way takes that into account
   * @throws Faulty when there are no hours for it
   */
  public static OffsetDateTime alone(Book book, PlanRequest request, String order) {
    OffsetDateTime from = request.present().map(Planning::begins).orElse(request.from());
    Book only = only(book, book.order(order));
    Aim soon = new Aim(order, from, 1);
    return Planning.aiming(only, request, List.of(soon)).orders().get(0).ready();
  }

  private Bounds bounds() {
    ShopBound bound = new ShopBound(studio.shop());
    List<OrderBound> orders = new ArrayList<>();
    for (Order order : book.orders()) {
      Map<String, Integer> alone = Needs.of(only(book, order), cover).of(order.id());
      Due served = studio.shop().dues().get(studio.orders().indexOf(order));
      OffsetDateTime soonest = time.at(bound.ready(needs(alone)));
      orders.add(new OrderBound(order.id(), soonest, time.at(bound.ready(served.needs()))));
    }
    return new Bounds(time.at(0), orders, late(bound), bound.attended());
  }

  private BigDecimal late(ShopBound bound) {
    return plain(BigDecimal.valueOf(bound.late()).divide(BigDecimal.valueOf(studio.weightScale())));
  }

  private List<Due.Need> needs(Map<String, Integer> castings) {
    List<String> pieces = studio.pieces().stream().map(Piece::id).toList();
    return castings.entrySet().stream()
        .map(need -> new Due.Need(pieces.indexOf(need.getKey()), need.getValue()))
        .toList();
  }

  private static BigDecimal plain(BigDecimal hours) {
    BigDecimal stripped = hours.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  /** The book with one order and no pin. */
  private static Book only(Book book, Order order) {
    return book.withOrders(List.of(order)).withPins(List.of());
  }
}
