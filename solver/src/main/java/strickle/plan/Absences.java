package strickle.plan;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Window;

/** Takes the hours of those who are away out of a book. */
final class Absences {

  private static final int DAY = 24 * 60;

  private final StudioTime time;
  private final List<History.Away> away;

  private Absences(StudioTime time, List<History.Away> away) {
    this.time = time;
    this.away = away;
  }

  /** The book in which nobody has hours while they are away. */
  static Book outOf(Book book, StudioTime time, List<History.Away> away) {
    Absences absences = new Absences(time, away);
    List<Person> people = book.people().stream().map(absences::outOf).toList();
    return new Book(
        book.studio(),
        people,
        book.stations(),
        book.forms(),
        book.moulds(),
        book.materials(),
        book.mixes(),
        book.pieces(),
        book.orders(),
        book.channels(),
        book.fairs(),
        book.pins());
  }

  private Person outOf(Person person) {
    Person left = person;
    for (History.Away one : away) {
      if (one.person().equals(person.id())) {
        left = without(left, one);
      }
    }
    return left;
  }

  private Person without(Person person, History.Away one) {
    Map<LocalDate, SpecialDay> special = new LinkedHashMap<>();
    person.exceptions().forEach(day -> special.put(day.date(), day));
    LocalDate last = local(one.to()).plusDays(1);
    for (LocalDate day = local(one.from()).minusDays(1);
        !day.isAfter(last);
        day = day.plusDays(1)) {
      List<Window> hours = person.hoursOn(day);
      List<Window> left = without(day, hours, one);
      if (!left.equals(hours)) {
        special.put(day, new SpecialDay(day, left));
      }
    }
    return new Person(person.id(), person.name(), person.hours(), List.copyOf(special.values()));
  }

  private LocalDate local(OffsetDateTime at) {
    return time.local(time.minute(at.toInstant())).toLocalDate();
  }

  private List<Window> without(LocalDate day, List<Window> hours, History.Away one) {
    List<Window> left = new ArrayList<>();
    for (Window window : hours) {
      int start = -1;
      for (int at = window.startMinute(); at <= window.endMinute(); at++) {
        boolean open = at < window.endMinute() && !isAway(day, at, one);
        if (open && start < 0) {
          start = at;
        } else if (!open && start >= 0) {
          left.add(new Window(start, Math.min(at, DAY)));
          start = -1;
        }
      }
    }
    return left;
  }

  private boolean isAway(LocalDate day, int minute, History.Away one) {
    long at = time.minute(day.atStartOfDay().plusMinutes(minute));
    return time.minute(one.from().toInstant()) <= at && at < time.minute(one.to().toInstant());
  }
}
