package strickle.plan;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.Piece;
import strickle.plan.bound.ShopBound;
import strickle.shop.Calendar;
import strickle.shop.Due;

/**
 * What no plan of a book can have ready by a moment: castings of each piece if it had the studio to
 * itself, turns of a form, open minutes.
 */
public final class InTime {

  private final Book book;
  private final StudioTime time;
  private final int by;
  private final StudioShop studio;
  private final ShopBound bound;

  private InTime(Book book, OffsetDateTime from, LocalDateTime by) {
    this.book = book;
    this.time = new StudioTime(from.toInstant(), book.studio().timeZone());
    int horizon = Planning.horizon(book, time);
    this.by = (int) Math.min(horizon, time.minute(by));
    this.studio = Compiler.compile(book, time, horizon, Needs.of(book), List.of());
    this.bound = new ShopBound(studio.shop());
  }

  /**
   * Looks at a book.
   *
   * @param book one that {@link Planning#faults} finds nothing in; only pieces that its orders need
   *     made are known
   * @param from the first moment that may be planned
   * @param by local time of the studio
   */
  public static InTime of(Book book, OffsetDateTime from, LocalDateTime by) {
    return new InTime(book, from, by);
  }

  /**
   * The most castings of a piece that can be ready, if it were alone, as few as the book needs at
   * most; 0 when it needs none.
   */
  public int castings(String piece) {
    int kind = kind(piece);
    int least = 0;
    int most = kind < 0 ? 0 : studio.shop().kinds().get(kind).jobs();
    while (least < most) {
      int middle = (least + most + 1) / 2;
      boolean fits = bound.ready(List.of(new Due.Need(kind, middle))) <= by;
      least = fits ? middle : least;
      most = fits ? most : middle - 1;
    }
    return least;
  }

  /**
   * The most castings of a piece in one run, of those that the book needs; 1 when it needs none.
   */
  public int run(String piece) {
    int kind = kind(piece);
    return kind < 0 ? 1 : bound.run(kind);
  }

  /** How many castings one unit of a form can see through, one after the other. */
  public int turns(String form) {
    List<String> forms = book.forms().stream().map(Form::id).toList();
    return bound.turns(forms.indexOf(form), by, studio.shop().jobs());
  }

  /** Minutes that somebody is there until then, all people together. */
  public long openMinutes() {
    return book.people().stream()
        .map(person -> Hours.calendar(person, time, Math.max(1, by)))
        .mapToLong(Calendar::workingMinutes)
        .sum();
  }

  private int kind(String piece) {
    return studio.pieces().stream().map(Piece::id).toList().indexOf(piece);
  }
}
