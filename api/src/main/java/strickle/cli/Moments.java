package strickle.cli;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/** Writes times as a maker reads them: weekday, date, 24 hours. They are local to the studio. */
final class Moments {

  /** Within so many days a weekday alone says which day is meant. */
  private static final int DAYS_OF_A_WEEKDAY = 6;

  private static final DateTimeFormatter DAY = pattern("EEE d MMM uuuu");
  private static final DateTimeFormatter FULL = pattern("EEE d MMM uuuu HH:mm");
  private static final DateTimeFormatter NEAR = pattern("EEE HH:mm");
  private static final DateTimeFormatter FAR = pattern("d MMM HH:mm");
  private static final DateTimeFormatter CLOCK = pattern("HH:mm");

  private Moments() {}

  /** "Tue 2 Mar 2027". */
  static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** "Tue 2 Mar 2027 18:30", of a local time or one with its offset. */
  static String full(TemporalAccessor time) {
    return FULL.format(time);
  }

  /** "Tue 18:30" within the next six days of another moment, else "9 Mar 18:30". */
  static String near(OffsetDateTime time, OffsetDateTime seenFrom) {
    boolean soon = Duration.between(seenFrom, time).toDays() < DAYS_OF_A_WEEKDAY;
    return (soon ? NEAR : FAR).format(time);
  }

  /** "18:30-19:16"; what lasts until midnight ends at 24:00. */
  static String spell(OffsetDateTime start, OffsetDateTime end) {
    boolean midnight = end.toLocalTime().equals(LocalTime.MIDNIGHT);
    return CLOCK.format(start) + "-" + (midnight ? "24:00" : CLOCK.format(end));
  }

  // Weekdays are English words like all others here.
  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
