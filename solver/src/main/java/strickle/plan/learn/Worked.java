package strickle.plan.learn;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.book.Person;
import strickle.book.Window;
import strickle.plan.replan.Happening;

/** How long somebody really worked on a task. */
final class Worked {

  private Worked() {}

  /**
   * Minutes of a task that is over: from start to end, less the closed times that lie wholly
   * within, as a task waits over noon or the night. Somebody who begins before opening works.
   */
  static double minutes(Book book, Happening task) {
    LocalDateTime start = task.start().orElseThrow();
    LocalDateTime end = task.end().orElseThrow();
    List<LocalDateTime> edges = edges(book.person(task.person().orElseThrow()), start, end);
    long minutes = Duration.between(start, end).toMinutes();
    for (int i = 1; i + 1 < edges.size(); i += 2) {
      LocalDateTime closes = edges.get(i);
      LocalDateTime opens = edges.get(i + 1);
      boolean within = !closes.isBefore(start) && !opens.isAfter(end);
      minutes -= within ? Duration.between(closes, opens).toMinutes() : 0;
    }
    return minutes;
  }

  /** Opening and closing times in turn, of the days of a task. */
  private static List<LocalDateTime> edges(Person person, LocalDateTime from, LocalDateTime to) {
    List<LocalDateTime> edges = new ArrayList<>();
    for (LocalDate day = from.toLocalDate();
        !day.isAfter(to.toLocalDate());
        day = day.plusDays(1)) {
      for (Window window : person.hoursOn(day)) {
        edges.add(day.atStartOfDay().plusMinutes(window.startMinute()));
        edges.add(day.atStartOfDay().plusMinutes(window.endMinute()));
      }
    }
    return edges;
  }
}
