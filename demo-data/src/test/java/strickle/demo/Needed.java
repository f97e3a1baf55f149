package strickle.demo;

import java.util.HashMap;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Order;
import strickle.book.Piece;

/** Counts the castings a book needs, by the rule of formats.md. */
final class Needed {

  private Needed() {}

  /** Castings of all pieces together. */
  static int castings(Book book) {
    Map<String, Integer> ordered = new HashMap<>();
    for (Order order : book.orders()) {
      for (Line line : order.lines()) {
        ordered.merge(line.piece(), line.quantity(), Integer::sum);
      }
    }
    return book.pieces().stream()
        .mapToInt(piece -> castings(book, piece, ordered.getOrDefault(piece.id(), 0)))
        .sum();
  }

  private static int castings(Book book, Piece piece, int ordered) {
    int demand = Math.max(0, ordered - piece.onHand());
    double goodEach = book.mould(piece.mould()).cavities() * piece.goodPercent() / 100;
    return (int) Math.ceil(demand / goodEach - 1e-9);
  }
}
