package strickle.plan.why;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.book.Form;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.SpecialDay;
import strickle.book.Station;
import strickle.book.Step;
import strickle.book.Window;

/** A book in which a relief has been granted, as the maker would write it down. */
final class Granted {

  private Granted() {}

  static Book book(Book book, Moments moments, List<Relief> reliefs) {
    Book granted = book;
    for (Relief relief : reliefs) {
      granted =
          switch (relief) {
            case Relief.More more -> more(granted, more.units());
            case Relief.Hours hours -> hours(granted, moments, hours);
            case Relief.Helper helper -> helper(granted, moments, helper);
            case Relief.Warmth warmth -> warm(granted);
            case Relief.Unpinned unpinned -> Altered.of(granted, "pins", List.of());
          };
    }
    return granted;
  }

  private static Book warm(Book book) {
    List<Climate> climate = Relief.Warmth.of(book.studio().climate());
    return Altered.of(book, "studio", Altered.of(book.studio(), "climate", climate));
  }

  private static Book more(Book book, Map<Thing, Integer> units) {
    List<Form> forms =
        book.forms().stream()
            .map(f -> Altered.of(f, "count", f.count() + count(units, Thing.form(f.id()))))
            .toList();
    List<Station> stations =
        book.stations().stream()
            .map(s -> Altered.of(s, "places", s.places() + count(units, Thing.station(s.id()))))
            .toList();
    return Altered.of(Altered.of(book, "forms", forms), "stations", stations);
  }

  private static int count(Map<Thing, Integer> units, Thing thing) {
    return units.getOrDefault(thing, 0);
  }

  private static Book hours(Book book, Moments moments, Relief.Hours hours) {
    List<Person> people =
        book.people().stream()
            .map(
                person ->
                    person.id().equals(hours.person())
                        ? longer(person, moments, hours.from(), hours.to())
                        : person)
            .toList();
    return Altered.of(book, "people", people);
  }

  private static Person longer(Person person, Moments moments, int from, int to) {
    LocalDateTime start = moments.local(from);
    LocalDate date = start.toLocalDate();
    int minute = start.getHour() * 60 + start.getMinute();
    List<Window> windows =
        Stream.concat(
                person.hoursOn(date).stream(), Stream.of(new Window(minute, minute + to - from)))
            .sorted(Comparator.comparingInt(Window::startMinute))
            .toList();
    List<SpecialDay> days = new ArrayList<>(person.exceptions());
    days.removeIf(day -> day.date().equals(date));
    days.add(new SpecialDay(date, windows));
    return Altered.of(person, "exceptions", days);
  }

  private static Book helper(Book book, Moments moments, Relief.Helper helper) {
    String id = "helper-" + helper.from();
    Person nobody = new Person(id, "a helper", Map.of(), List.of());
    List<Person> people =
        Stream.concat(
                book.people().stream(),
                Stream.of(longer(nobody, moments, helper.from(), helper.to())))
            .toList();
    List<Piece> pieces =
        book.pieces().stream()
            .map(p -> Altered.of(p, "route", p.route().stream().map(s -> by(s, id)).toList()))
            .toList();
    return Altered.of(Altered.of(book, "people", people), "pieces", pieces);
  }

  private static Step by(Step step, String id) {
    return step.by().isEmpty()
        ? step
        : Altered.of(step, "by", Stream.concat(step.by().stream(), Stream.of(id)).toList());
  }
}
