package strickle.plan.why;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.book.Person;
import strickle.book.Window;
import strickle.plan.Cover;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.shop.Calendar;

/** Plans of books, and their floors with the hours of a year. */
final class Floors {

  private static final int DAYS = 366;
  private static final long SCHEDULES = 12;

  private Floors() {}

  static Floor of(Book book, Plan plan) {
    Moments moments = new Moments(plan.from(), book.studio().timeZone());
    Map<String, Calendar> hours = new HashMap<>();
    book.people().forEach(person -> hours.put(person.id(), hours(person, moments)));
    return Floor.of(
        book, Cover.of(plan.coverPercent()), moments, hours, Courses.of(book, plan, moments));
  }

  /** A plan of a book after few schedules; nothing when it cannot be planned. */
  static Optional<Plan> plan(Book book) {
    LocalDateTime monday = LocalDateTime.parse("2027-04-05T00:00");
    OffsetDateTime from = monday.atZone(book.studio().timeZone()).toOffsetDateTime();
    try {
      PlanRequest request = new PlanRequest(from, Effort.ofSchedules(SCHEDULES), 1);
      return Optional.of(Planning.of(book, request, progress -> {}).run());
    } catch (Faulty impossible) {
      return Optional.empty();
    }
  }

  private static Calendar hours(Person person, Moments moments) {
    List<Integer> opens = new ArrayList<>();
    List<Integer> closes = new ArrayList<>();
    LocalDate first = moments.local(0).toLocalDate();
    for (int day = 0; day < DAYS; day++) {
      for (Window window : person.hoursOn(first.plusDays(day))) {
        LocalDateTime midnight = first.plusDays(day).atStartOfDay();
        opens.add(moments.minute(midnight.plusMinutes(window.startMinute())));
        closes.add(moments.minute(midnight.plusMinutes(window.endMinute())));
      }
    }
    return Calendar.of(
        opens.stream().mapToInt(i -> i).toArray(), closes.stream().mapToInt(i -> i).toArray());
  }
}
