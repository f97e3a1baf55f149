package strickle.plan.whatif;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Window;

/**
 * A second pair of hands for a day: somebody more, who may do whatever anybody may do. What only
 * named people may do stays with them.
 *
 * @param day the local date, from 1970 to 2199
 * @param window when on that date; empty for whenever somebody else is there, or from 9 to 17 when
 *     nobody is
 */
public record Helper(LocalDate day, Optional<Window> window) implements Change {

  private static final String ID = "helper";
  private static final Window USUAL = new Window(9 * 60, 17 * 60);

  /** Refuses a missing part. */
  public Helper {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(window, "window");
  }

  @Override
  public String text() {
    return "helper:" + day + window.map(hours -> "T" + hours).orElse("");
  }

  @Override
  public String words(Book book) {
    return "a helper " + Say.day(day) + " " + Say.windows(hours(book));
  }

  @Override
  public List<Fault> faults(Book book) {
    return List.of();
  }

  @Override
  public Book on(Book book) {
    SpecialDay only = new SpecialDay(day, hours(book));
    return Rebuilt.plus(book, new Person(free(book), ID, Map.of(), List.of(only)));
  }

  /** The wage for the whole time the helper is there, whatever is done in it. */
  @Override
  public Cost cost(Book book) {
    return DayHours.wage(book, DayHours.minutes(hours(book)));
  }

  @Override
  public Optional<LocalDate> date() {
    return Optional.of(day);
  }

  private List<Window> hours(Book book) {
    List<Window> open = window.map(List::of).orElseGet(() -> DayHours.ofAll(book, day));
    return open.isEmpty() ? List.of(USUAL) : open;
  }

  /** An id that nobody has. */
  private static String free(Book book) {
    List<String> taken = book.people().stream().map(Person::id).toList();
    String id = ID;
    for (int number = 2; taken.contains(id); number++) {
      id = ID + "-" + number;
    }
    return id;
  }
}
