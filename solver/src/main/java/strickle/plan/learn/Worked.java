package strickle.plan.learn;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import strickle.book.Book;
import strickle.book.Person;
import strickle.book.Window;
import strickle.plan.replan.Happening;

/** How long somebody really worked on a task. */
final class Worked {

  private Worked() {}

  /**
   * Minutes of a task that is over: those in the opening hours of who did it, as nobody works at
   * night on what was begun the day before; or all of them, when none lies in those hours.
   */
  static double minutes(Book book, Happening task) {
    LocalDateTime start = task.start().orElseThrow();
    LocalDateTime end = task.end().orElseThrow();
    Person person = book.person(task.person().orElseThrow());
    long open = 0;
    for (LocalDate day = start.toLocalDate();
        !day.isAfter(end.toLocalDate());
        day = day.plusDays(1)) {
      for (Window window : person.hoursOn(day)) {
        open += overlap(day, window, start, end);
      }
    }
    return open > 0 ? open : Duration.between(start, end).toMinutes();
  }

  private static long overlap(
      LocalDate day, Window window, LocalDateTime start, LocalDateTime end) {
    LocalDateTime opens = day.atStartOfDay().plusMinutes(window.startMinute());
    LocalDateTime closes = day.atStartOfDay().plusMinutes(window.endMinute());
    LocalDateTime from = opens.isAfter(start) ? opens : start;
    LocalDateTime to = closes.isBefore(end) ? closes : end;
    return Math.max(0, Duration.between(from, to).toMinutes());
  }
}
