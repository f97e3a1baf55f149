package strickle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;
import strickle.shop.Due;

/** What the orders of a book still need beyond what has been poured. */
final class Owed {

  private final Book book;
  private final Goods each;
  private final Map<String, Double> brought = new HashMap<>();
  private final Map<String, Integer> poured = new HashMap<>();
  private final Map<String, Integer> toPour = new LinkedHashMap<>();

  private Owed(Standing standing) {
    this.book = standing.book();
    this.each = standing.goods();
    for (Lot lot : standing.present().lots()) {
      if (standing.isBegun(lot)) {
        for (Run run : lot.runs()) {
          brought.merge(run.piece(), each.of(standing.withLosses(run)), Double::sum);
          boolean counts = !Goods.isLost(book, standing.withLosses(run));
          poured.merge(run.piece(), counts ? run.castings() : 0, Integer::sum);
        }
      }
    }
    Map<String, Long> asked = new HashMap<>();
    book.orders().stream()
        .flatMap(order -> order.lines().stream())
        .forEach(line -> asked.merge(line.piece(), (long) line.quantity(), Long::sum));
    for (Piece piece : book.pieces()) {
      double needed = each.needed(piece, asked.getOrDefault(piece.id(), 0L));
      double missing = needed - brought.getOrDefault(piece.id(), 0.0);
      toPour.put(piece.id(), each.castings(piece, missing));
    }
  }

  /** What is owed as things stand. */
  static Owed of(Standing standing) {
    return new Owed(standing);
  }

  /** Castings still to be poured, by piece. */
  Map<String, Integer> toPour() {
    return toPour;
  }

  /** The fewest castings still to be poured without which so much of a piece is never there. */
  int fewestToPour(Piece piece, double needed) {
    return each.castings(piece, needed - brought.getOrDefault(piece.id(), 0.0));
  }

  /** Castings of a piece in all that bring anything, poured or to be poured. */
  int castings(Piece piece) {
    return poured.getOrDefault(piece.id(), 0) + toPour.get(piece.id());
  }

  /**
   * Ids of the orders that wait for castings of these pieces still to be poured, first served
   * first.
   */
  List<String> ordersToPour(List<String> pieces) {
    List<String> orders = new ArrayList<>();
    Map<String, Long> asked = new HashMap<>();
    for (Order order : Needs.serving(book)) {
      boolean waits = false;
      for (Line line : order.lines()) {
        long sum = asked.merge(line.piece(), (long) line.quantity(), Long::sum);
        Piece piece = book.piece(line.piece());
        waits |= pieces.contains(piece.id()) && fewestToPour(piece, each.needed(piece, sum)) > 0;
      }
      if (waits) {
        orders.add(order.id());
      }
    }
    return orders;
  }

  /** Of what each order waits for, the fewest castings of it that are still to be poured. */
  List<List<Due.Need>> needsToPour() {
    List<List<Due.Need>> needs = new ArrayList<>();
    Map<String, Long> asked = new HashMap<>();
    for (Order order : Needs.serving(book)) {
      Map<Integer, Due.Need> ofOrder = new LinkedHashMap<>();
      for (Line line : order.lines()) {
        long sum = asked.merge(line.piece(), (long) line.quantity(), Long::sum);
        Piece piece = book.piece(line.piece());
        int count = fewestToPour(piece, each.needed(piece, sum));
        int kind = book.pieces().indexOf(piece);
        if (count > 0) {
          ofOrder.put(kind, new Due.Need(kind, count));
        }
      }
      needs.add(List.copyOf(ofOrder.values()));
    }
    return needs;
  }

  /** What each order waits for, in the order they are served; kinds are places in the book. */
  List<List<Due.Need>> needs() {
    List<List<Due.Need>> needs = new ArrayList<>();
    Map<String, Long> asked = new HashMap<>();
    for (Order order : Needs.serving(book)) {
      Map<Integer, Due.Need> ofOrder = new LinkedHashMap<>();
      for (Line line : order.lines()) {
        long sum = asked.merge(line.piece(), (long) line.quantity(), Long::sum);
        Piece piece = book.piece(line.piece());
        double needed = each.needed(piece, sum);
        double worth = needed / each.each(piece);
        int count = each.castings(piece, needed);
        int kind = book.pieces().indexOf(piece);
        if (count > 0 && castings(piece) > 0) {
          int most = Math.min(count, castings(piece));
          ofOrder.put(kind, new Due.Need(kind, most, Math.min(worth, most)));
        }
      }
      needs.add(List.copyOf(ofOrder.values()));
    }
    return needs;
  }
}
