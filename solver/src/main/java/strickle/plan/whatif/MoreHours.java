package strickle.plan.whatif;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Person;
import strickle.book.Window;

/**
 * One more opening window of somebody on one date.
 *
 * @param person the person's id
 * @param day the local date, from 1970 to 2199
 * @param window when on that date; what is open already is not counted again
 */
public record MoreHours(String person, LocalDate day, Window window) implements Change {

  @Override
  public String text() {
    return "hours:" + person + ":" + day + "T" + window;
  }

  @Override
  public String words(Book book) {
    return "hours for " + book.person(person).name() + " " + Say.day(day) + " " + window;
  }

  @Override
  public List<Fault> faults(Book book) {
    List<Fault> missing =
        Say.missing("person", person, book.people().stream().map(Person::id).toList());
    if (!missing.isEmpty()) {
      return missing;
    }
    return Say.unless(
        added(book) > 0,
        window + ", when " + book.person(person).name() + " is there already",
        "a time outside of " + Say.windows(book.person(person).hoursOn(day)));
  }

  @Override
  public Book on(Book book) {
    Say.must(faults(book));
    return Rebuilt.with(book, DayHours.on(book.person(person), day, hours(book)));
  }

  /** The wage for the whole of the window, whatever is done in it. */
  @Override
  public Cost cost(Book book) {
    return DayHours.wage(book, added(book));
  }

  @Override
  public Optional<LocalDate> date() {
    return Optional.of(day);
  }

  private List<Window> hours(Book book) {
    return DayHours.plus(book.person(person).hoursOn(day), window);
  }

  private int added(Book book) {
    return DayHours.minutes(hours(book)) - DayHours.minutes(book.person(person).hoursOn(day));
  }
}
