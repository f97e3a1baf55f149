package strickle.price;

import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Fair;
import strickle.book.Fault;
import strickle.book.Nearest;
import strickle.book.Piece;

/** Finds what a request names in the book, and notes what is not there. */
final class Named {

  private Named() {}

  /** The piece with an id, unless it is unknown. */
  static Optional<Piece> piece(Book book, String id, String path, List<Fault> faults) {
    note(id, book.pieces().stream().map(Piece::id).toList(), "piece", path, faults);
    return book.pieces().stream().filter(piece -> piece.id().equals(id)).findFirst();
  }

  /** The channel with an id, unless it is unknown. */
  static Optional<Channel> channel(Book book, String id, String path, List<Fault> faults) {
    note(id, book.channels().stream().map(Channel::id).toList(), "channel", path, faults);
    return book.channels().stream().filter(channel -> channel.id().equals(id)).findFirst();
  }

  /** The fair with an id, unless it is unknown. */
  static Optional<Fair> fair(Book book, String id, String path, List<Fault> faults) {
    note(id, book.fairs().stream().map(Fair::id).toList(), "fair", path, faults);
    return book.fairs().stream().filter(fair -> fair.id().equals(id)).findFirst();
  }

  private static void note(
      String id, List<String> known, String what, String path, List<Fault> faults) {
    if (!known.contains(id)) {
      String right =
          Nearest.to(id, known)
              .map(near -> "maybe \"" + near + "\"")
              .orElse("the id of a " + what + " of the book");
      faults.add(new Fault(path, '"' + id + '"', right));
    }
  }
}
