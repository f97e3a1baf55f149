package strickle.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Window;

/**
 * What a person's opening hours amount to: minutes a week, days a week, the longest time closed.
 */
final class OpenHours {

  private static final int MINUTES_A_DAY = 24 * 60;

  /** Far beyond the last exception a generated book has. */
  private static final int DAYS_LOOKED_AT = 26 * 7;

  private OpenHours() {}

  /** Minutes that all of them together are open in a week without exceptions. */
  static int weeklyMinutes(List<Person> people) {
    return people.stream()
        .map(Person::hours)
        .map(Map::values)
        .flatMap(Collection::stream)
        .flatMap(List::stream)
        .mapToInt(w -> w.endMinute() - w.startMinute())
        .sum();
  }

  /** Weekdays on which any of them is open. */
  static int weeklyDays(List<Person> people) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    people.forEach(p -> days.addAll(p.hours().keySet()));
    return days.size();
  }

  /**
   * The longest time in elapsed hours, rounded up, that any one of them is closed without a break
   * in the half year from a date on, exceptions counted, with an hour to spare for a clock change.
   */
  static int longestClosedHours(List<Person> people, LocalDate from) {
    return people.stream().mapToInt(p -> longestClosedHours(p, from)).max().orElseThrow();
  }

  private static int longestClosedHours(Person person, LocalDate from) {
    Map<LocalDate, List<Window>> exceptions = new HashMap<>();
    for (SpecialDay day : person.exceptions()) {
      exceptions.put(day.date(), day.hours());
    }
    int lastEnd = 0;
    int longest = 0;
    for (int day = 0; day < DAYS_LOOKED_AT; day++) {
      LocalDate date = from.plusDays(day);
      List<Window> usual = person.hours().getOrDefault(date.getDayOfWeek(), List.of());
      for (Window window : exceptions.getOrDefault(date, usual)) {
        longest = Math.max(longest, day * MINUTES_A_DAY + window.startMinute() - lastEnd);
        lastEnd = day * MINUTES_A_DAY + window.endMinute();
      }
    }
    return longest / 60 + 2;
  }
}
