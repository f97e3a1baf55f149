package strickle.plan;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Line;
import strickle.book.Material;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.book.Pin;
import strickle.shop.Activity;
import strickle.shop.Kind;
import strickle.shop.Shop;

/**
 * When materials that are short in stock can be there. A material is short when all castings and
 * orders of the book together use more than is on hand; ordered on a day, it is there when the day
 * begins that lies its lead days later.
 */
final class Arrivals {

  /** A scale shows tenths; less than half of one is rounding. */
  private static final double TOLERANCE = 0.05;

  private final Book book;
  private final StudioTime time;
  private final OffsetDateTime now;

  /** The minute each short material can be there. */
  private final Map<String, Long> minutes = new HashMap<>();

  private Arrivals(Book book, StudioTime time, OffsetDateTime now) {
    this.book = book;
    this.time = time;
    this.now = now;
  }

  /**
   * Reads a book.
   *
   * @param now from when on materials can be ordered
   */
  static Arrivals of(Book book, Needs needs, StudioTime time, OffsetDateTime now) {
    Arrivals arrivals = new Arrivals(book, time, now);
    arrivals
        .needed(needs)
        .forEach(
            (id, quantity) -> {
              Material material = book.material(id);
              if (quantity > material.onHand().doubleValue() + TOLERANCE) {
                arrivals.minutes.put(id, arrivals.there(material));
              }
            });
    return arrivals;
  }

  /** Every pinned pour that begins before what it needs can be there. */
  List<Fault> pins() {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < book.pins().size(); i++) {
      Pin pin = book.pins().get(i);
      long there = first(MaterialUse.ofPour(book, book.piece(pin.piece()), 1));
      if (time.minute(pin.start()) < there) {
        String right =
            time.local(there) + " or later, when what it needs can be there, or more in stock";
        faults.add(new Fault("$.pins[" + i + "].start", pin.start().toString(), right));
      }
    }
    return faults;
  }

  /** The studio in which every task that uses a short material waits for it. */
  StudioShop on(StudioShop studio) {
    Shop shop = studio.shop();
    List<Kind> kinds = new ArrayList<>();
    for (int i = 0; i < shop.kinds().size(); i++) {
      kinds.add(waiting(shop.kinds().get(i), studio.pieces().get(i)));
    }
    return studio.with(
        new Shop(
            shop.horizonMinutes(),
            shop.lateUnitMinutes(),
            shop.workers(),
            shop.clocks(),
            shop.resources(),
            shop.families(),
            kinds,
            shop.links(),
            shop.dues(),
            shop.fixed()));
  }

  /** The plan with its reasons; of a late order that waits for materials, with those. */
  Plan explained(Plan plan, Plan explained) {
    List<OrderOutcome> outcomes = new ArrayList<>();
    for (OrderOutcome one : explained.orders()) {
      Optional<String> waited = one.lateMinutes() == 0 ? Optional.empty() : because(one);
      outcomes.add(
          waited
              .map(
                  why ->
                      new OrderOutcome(one.order(), one.ready(), one.lateMinutes(), List.of(why)))
              .orElse(one));
    }
    return plan.withOrders(outcomes);
  }

  /** What held an order up, if it uses anything that is waited for. */
  private Optional<String> because(OrderOutcome outcome) {
    Order order = book.order(outcome.order());
    List<String> waited =
        order.lines().stream()
            .map(line -> book.piece(line.piece()))
            .flatMap(piece -> MaterialUse.ofCastings(book, piece, 1).keySet().stream())
            .distinct()
            .filter(minutes::containsKey)
            .map(id -> book.material(id).name() + " " + time.local(minutes.get(id)).toLocalDate())
            .toList();
    return waited.isEmpty()
        ? Optional.empty()
        : Optional.of("it waits for materials that can be there: " + String.join(", ", waited));
  }

  private Kind waiting(Kind kind, Piece piece) {
    List<Activity> chain = new ArrayList<>();
    for (int i = 0; i < kind.chain().size(); i++) {
      Map<String, Double> used =
          switch (i) {
            case 0 -> MaterialUse.ofPour(book, piece, 1);
            case 1 -> Map.of();
            default -> MaterialUse.ofStep(piece, i - 1, 1);
          };
      chain.add(kind.chain().get(i).from((int) first(used)));
    }
    return new Kind(
        kind.name(), kind.family(), kind.jobs(), kind.amounts(), chain, kind.tailMinutes());
  }

  /** The minute by which all that is short of it can be there. */
  private long first(Map<String, Double> used) {
    return used.keySet().stream().mapToLong(id -> minutes.getOrDefault(id, 0L)).max().orElse(0);
  }

  private long there(Material material) {
    LocalDate day = now.atZoneSameInstant(time.zone()).toLocalDate();
    long begins = time.minute(day.plusDays(material.leadDays()).atStartOfDay());
    return Math.max(0, Math.max(begins, time.minute(now.toInstant())));
  }

  private Map<String, Double> needed(Needs needs) {
    Map<String, Double> needed = new HashMap<>();
    for (Piece piece : book.pieces()) {
      int castings = needs.castings(piece.id());
      if (castings > 0) {
        MaterialUse.ofCastings(book, piece, castings)
            .forEach((id, quantity) -> needed.merge(id, quantity, Double::sum));
      }
    }
    for (Order order : book.orders()) {
      for (Line line : order.lines()) {
        MaterialUse.ofPacking(book.piece(line.piece()), line.quantity())
            .forEach((id, quantity) -> needed.merge(id, quantity, Double::sum));
      }
    }
    return needed;
  }
}
