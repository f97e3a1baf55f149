package strickle.plan.whatif;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;

/** A change of the studio that can be tried: it makes another book of a book. */
public sealed interface Change
    permits MoreForms,
        MorePlaces,
        MoreHours,
        Helper,
        WarmerRoom,
        RoomAtLeast,
        BatchLimit,
        Together {

  /** The change as it is written, such as {@code form:tub-a+1}; {@link ChangeText} reads it. */
  String text();

  /**
   * The change in a maker's words, such as "one more mid tub"; only for a book it can be made in.
   */
  String words(Book book);

  /** Everything that keeps the change from being made in a book, with empty paths. */
  List<Fault> faults(Book book);

  /**
   * The book with the change made.
   *
   * @throws strickle.book.Faulty with {@link #faults}
   */
  Book on(Book book);

  /** What the change costs, in the book's currency; only for a book it can be made in. */
  Cost cost(Book book);

  /** The local date the change is for; empty when it is for good. */
  default Optional<LocalDate> date() {
    return Optional.empty();
  }
}
