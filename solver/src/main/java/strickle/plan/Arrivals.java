package strickle.plan;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
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

  /** The minute each short material can be there. */
  private final Map<String, Long> minutes = new HashMap<>();

  private Arrivals(Book book, StudioTime time) {
    this.book = book;
    this.time = time;
  }

  /**
   * Reads a book.
   *
   * @param now from when on materials can be ordered
   */
  static Arrivals of(Book book, Needs needs, StudioTime time, OffsetDateTime now) {
    Arrivals arrivals = new Arrivals(book, time);
    arrivals.order(piece -> needs.castings(piece.id()), now);
    return arrivals;
  }

  /**
   * Of the rest of a plan that waits for materials. What was short when it was laid out was ordered
   * then; what has become short since is ordered now.
   *
   * @param owed castings of each piece, poured or to be poured
   */
  static Arrivals ofRest(Standing standing, Owed owed, OffsetDateTime ordered) {
    Map<String, Integer> planned = new HashMap<>();
    for (Lot lot : standing.present().lots()) {
      lot.runs().forEach(run -> planned.merge(run.piece(), run.castings(), Integer::sum));
    }
    Arrivals arrivals = new Arrivals(standing.book(), standing.time());
    arrivals.order(piece -> planned.getOrDefault(piece.id(), 0), ordered);
    arrivals.order(owed::castings, standing.time().at(standing.now()));
    return arrivals;
  }

  /** Orders what so many castings, and the packing of all orders, use beyond the stock. */
  private void order(ToIntFunction<Piece> castings, OffsetDateTime ordered) {
    needed(castings)
        .forEach(
            (id, quantity) -> {
              Material material = book.material(id);
              if (quantity > material.onHand().doubleValue() + TOLERANCE) {
                minutes.computeIfAbsent(id, one -> there(material, ordered));
              }
            });
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
      kinds.add(on(shop.kinds().get(i), studio.pieces().get(i)));
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
            .filter(id -> minutes.getOrDefault(id, 0L) > 0)
            .map(id -> book.material(id).name() + " " + time.local(minutes.get(id)).toLocalDate())
            .toList();
    return waited.isEmpty()
        ? Optional.empty()
        : Optional.of("it waits for materials that can be there: " + String.join(", ", waited));
  }

  /** The minute by which all that castings of a piece use can be there. */
  int first(Piece piece) {
    return (int) first(MaterialUse.ofCastings(book, piece, 1));
  }

  /** The kind in which every task that uses a short material waits for it. */
  Kind on(Kind kind, Piece piece) {
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

  private long there(Material material, OffsetDateTime ordered) {
    OffsetDateTime at = Arrival.of(material, ordered, time.zone());
    return Math.max(0, time.minute(at.toInstant()));
  }

  private Map<String, Double> needed(ToIntFunction<Piece> castings) {
    Map<String, Double> needed = new HashMap<>();
    for (Piece piece : book.pieces()) {
      int count = castings.applyAsInt(piece);
      if (count > 0) {
        MaterialUse.ofCastings(book, piece, count)
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
