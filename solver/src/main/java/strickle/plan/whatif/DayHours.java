package strickle.plan.whatif;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strickle.book.Book;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Window;

/** Opening windows of one day, put together and counted. */
final class DayHours {

  private static final BigDecimal HOUR = BigDecimal.valueOf(60);
  private static final int DECIMALS = 4;

  private DayHours() {}

  /**
   * The windows with one more; those it touches become one with it, all others stay as they are.
   */
  static List<Window> plus(List<Window> windows, Window more) {
    List<Window> all = new ArrayList<>();
    int start = more.startMinute();
    int end = more.endMinute();
    for (Window window : windows) {
      if (window.startMinute() <= end && start <= window.endMinute()) {
        start = Math.min(start, window.startMinute());
        end = Math.max(end, window.endMinute());
      } else {
        all.add(window);
      }
    }
    all.add(new Window(start, end));
    all.sort(Comparator.comparingInt(Window::startMinute));
    return all;
  }

  /** When anybody is there on a date. */
  static List<Window> ofAll(Book book, LocalDate date) {
    List<Window> all = List.of();
    for (Person person : book.people()) {
      for (Window window : person.hoursOn(date)) {
        all = plus(all, window);
      }
    }
    return all;
  }

  /** Minutes open, by the clock. */
  static int minutes(List<Window> windows) {
    return windows.stream().mapToInt(Window::minutes).sum();
  }

  /** A person with these hours on a date and no others. */
  static Person on(Person person, LocalDate date, List<Window> hours) {
    List<SpecialDay> days = new ArrayList<>(person.exceptions());
    days.removeIf(day -> day.date().equals(date));
    days.add(new SpecialDay(date, hours));
    return new Person(person.id(), person.name(), person.hours(), days);
  }

  /** The wage for so many minutes that somebody is there, working or not. */
  static Cost wage(Book book, int minutes) {
    BigDecimal wage = book.studio().wagePerHour();
    BigDecimal amount =
        wage.multiply(BigDecimal.valueOf(minutes)).divide(HOUR, DECIMALS, RoundingMode.HALF_UP);
    return Cost.of(amount, "the wage for " + Say.minutes(minutes));
  }
}
