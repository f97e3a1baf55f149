package strickle.plan.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Form;
import strickle.book.Person;
import strickle.book.Station;
import strickle.book.Studio;

/** Makes a book anew with one thing in it exchanged. */
final class Rebuilt {

  private Rebuilt() {}

  /** With another form in the place of the one with its id. */
  static Book with(Book book, Form form) {
    List<Form> forms = replaced(book.forms(), form, Form::id);
    return of(book, book.studio(), book.people(), book.stations(), forms);
  }

  /** With another station in the place of the one with its id. */
  static Book with(Book book, Station station) {
    List<Station> stations = replaced(book.stations(), station, Station::id);
    return of(book, book.studio(), book.people(), stations, book.forms());
  }

  /** With another person in the place of the one with their id. */
  static Book with(Book book, Person person) {
    List<Person> people = replaced(book.people(), person, Person::id);
    return of(book, book.studio(), people, book.stations(), book.forms());
  }

  /** With one person more. */
  static Book plus(Book book, Person person) {
    List<Person> people = new ArrayList<>(book.people());
    people.add(person);
    return of(book, book.studio(), people, book.stations(), book.forms());
  }

  /** With another climate in the room. */
  static Book with(Book book, List<Climate> climate) {
    return with(book, book.studio().batchLimitGrams(), climate);
  }

  /** With another batch limit. */
  static Book with(Book book, double batchLimitGrams) {
    return with(book, batchLimitGrams, book.studio().climate());
  }

  private static Book with(Book book, double batchLimitGrams, List<Climate> climate) {
    Studio old = book.studio();
    Studio studio =
        new Studio(
            old.name(),
            old.currency(),
            old.timeZone(),
            old.wagePerHour(),
            old.overheadPerMonth(),
            old.productiveHoursPerMonth(),
            batchLimitGrams,
            climate);
    return of(book, studio, book.people(), book.stations(), book.forms());
  }

  private static <T> List<T> replaced(List<T> list, T other, Function<T, String> id) {
    return list.stream().map(one -> id.apply(one).equals(id.apply(other)) ? other : one).toList();
  }

  private static Book of(
      Book book, Studio studio, List<Person> people, List<Station> stations, List<Form> forms) {
    return new Book(
        studio,
        people,
        stations,
        forms,
        book.moulds(),
        book.materials(),
        book.mixes(),
        book.pieces(),
        book.orders(),
        book.channels(),
        book.fairs(),
        book.pins());
  }
}
