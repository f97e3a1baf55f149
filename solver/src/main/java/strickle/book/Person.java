package strickle.book;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Somebody who works in the studio.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param hours opening windows by weekday, Monday first; a weekday that is missing has none
 * @param exceptions dates with other hours than their weekday's, each date once
 */
public record Person(
    String id, String name, Map<DayOfWeek, List<Window>> hours, List<SpecialDay> exceptions) {

  /**
   * Checks the person and copies the hours.
   *
   * @throws Faulty with every fault, paths relative to the person
   */
  public Person {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    hours = week(check, hours);
    exceptions = check.list(".exceptions", exceptions);
    check.distinct(".exceptions", exceptions, SpecialDay::date, ".date");
    check.done();
  }

  private static Map<DayOfWeek, List<Window>> week(
      Check check, Map<DayOfWeek, List<Window>> hours) {
    Map<DayOfWeek, List<Window>> week = new EnumMap<>(DayOfWeek.class);
    if (check.given(".hours", hours, "hours by weekday, empty when there are none")) {
      for (DayOfWeek day : DayOfWeek.values()) {
        if (hours.containsKey(day)) {
          week.put(day, check.windows(".hours." + shortName(day), hours.get(day)));
        }
      }
    }
    return Collections.unmodifiableMap(week);
  }

  // MON, TUE, … as the file writes them.
  private static String shortName(DayOfWeek day) {
    return day.name().substring(0, 3);
  }

  /** The opening windows of one date: those of its special day, else those of its weekday. */
  public List<Window> hoursOn(LocalDate date) {
    return exceptions.stream()
        .filter(special -> special.date().equals(date))
        .findFirst()
        .map(SpecialDay::hours)
        .orElseGet(() -> hours.getOrDefault(date.getDayOfWeek(), List.of()));
  }

  /** Whether there is any opening window at all, on a weekday or on a special day. */
  public boolean hasHours() {
    return Stream.concat(hours.values().stream(), exceptions.stream().map(SpecialDay::hours))
        .anyMatch(windows -> !windows.isEmpty());
  }
}
