package strickle.plan.promise;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Nearest;
import strickle.book.Piece;
import strickle.plan.Plan;
import strickle.plan.Planning;

/** Refuses requests that make no sense. */
final class Sense {

  private static final int MOST_PIECES = 100_000;
  private static final String ORDERS = "$.orders";

  private Sense() {}

  /**
   * Looks at a request.
   *
   * @throws Faulty with everything that is wrong with it
   */
  static void check(Book book, Plan plan, PromiseRequest request) {
    List<Fault> faults = new ArrayList<>();
    piece(book, request.piece()).ifPresent(faults::add);
    int quantity = request.quantity();
    if (quantity < 1 || quantity > MOST_PIECES) {
      faults.add(new Fault(".quantity", "" + quantity, "a whole number from 1 to " + MOST_PIECES));
    }
    latest(plan, request).ifPresent(faults::add);
    order(book, request).ifPresent(faults::add);
    if (faults.isEmpty()) {
      faults.addAll(whole(book, plan, request));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private static Optional<Fault> piece(Book book, String piece) {
    List<String> pieces = book.pieces().stream().map(Piece::id).toList();
    if (pieces.contains(piece)) {
      return Optional.empty();
    }
    String known = pieces.isEmpty() ? "a book with pieces" : String.join(", ", pieces);
    String right =
        Nearest.to(piece, pieces)
            .map(near -> "the id of a piece in the book; did you mean \"" + near + "\"?")
            .orElse("the id of a piece in the book: " + known);
    return Optional.of(new Fault(".piece", quoted(piece), right));
  }

  private static Optional<Fault> latest(Plan plan, PromiseRequest request) {
    LocalDateTime from = Planning.begins(plan).toLocalDateTime();
    String since = plan.history().isPresent() ? ", when it was laid out anew" : ", when it begins";
    return request
        .latest()
        .filter(at -> at.isBefore(from))
        .map(at -> new Fault(".latest", "" + at, "not before " + from + since));
  }

  private static Optional<Fault> order(Book book, PromiseRequest request) {
    return request
        .order()
        .filter(id -> book.orders().stream().anyMatch(order -> order.id().equals(id)))
        .map(id -> new Fault(".order", quoted(id), "an id that no order of the book has"));
  }

  /** What keeps the book with the new order from being planned; too many castings are its own. */
  private static List<Fault> whole(Book book, Plan plan, PromiseRequest request) {
    Book with = new Addition(book, request).due(Planning.begins(plan));
    return Planning.faults(with, plan).stream()
        .map(one -> one.path().equals(ORDERS) ? one.under(".quantity, as it would be ") : one)
        .toList();
  }

  private static String quoted(String text) {
    return '"' + text + '"';
  }
}
