package strickle.plan.why;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Minutes since the plan began, and how a moment and a while are said. The names of days and months
 * are written out here, so that they do not depend on the language of the machine.
 */
final class Moments {

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  /** From so many days on a while is said in days. */
  private static final int DAYS_FROM = 3;

  private final Instant from;
  private final ZoneId zone;
  private final int begins;

  /** A line that begins at the whole minute {@code from} lies in. */
  Moments(OffsetDateTime from, ZoneId zone) {
    this(from, zone, from);
  }

  /** A line on which nothing new begins before the moment {@code opens}. */
  Moments(OffsetDateTime from, ZoneId zone, OffsetDateTime opens) {
    this.from = from.toInstant().truncatedTo(ChronoUnit.MINUTES);
    this.zone = zone;
    this.begins = minute(opens);
  }

  /** The minute before which nothing new begins: 0, or later in a plan laid out anew. */
  int begins() {
    return begins;
  }

  /** The minute a moment lies in; negative before the plan begins. */
  int minute(Instant at) {
    return (int) Math.floorDiv(at.getEpochSecond() - from.getEpochSecond(), 60L);
  }

  int minute(OffsetDateTime at) {
    return minute(at.toInstant());
  }

  /** The minute of a local time; one skipped by a clock change counts as so much later. */
  int minute(LocalDateTime local) {
    return minute(local.atZone(zone).toInstant());
  }

  Instant instant(int minute) {
    return from.plusSeconds(minute * 60L);
  }

  LocalDateTime local(int minute) {
    return instant(minute).atZone(zone).toLocalDateTime();
  }

  /** Day and time, such as {@code Tue 6 Apr 14:10}; with the year when it is not the first one. */
  String say(int minute) {
    LocalDateTime at = local(minute);
    String year = at.getYear() == local(0).getYear() ? "" : " " + at.getYear();
    return name(at.getDayOfWeek())
        + " "
        + at.getDayOfMonth()
        + " "
        + name(at.getMonth())
        + year
        + " "
        + time(at);
  }

  /** From one moment to another: {@code between Tue 6 Apr 14:10 and 14:45}. */
  String between(int start, int end) {
    boolean sameDay = local(start).toLocalDate().equals(local(end).toLocalDate());
    return "between " + say(start) + " and " + (sameDay ? time(local(end)) : say(end));
  }

  /** A while: {@code 34 min}, {@code 4 h 4 min}, {@code 5 days 12 h} (minutes are dropped then). */
  static String lasting(int minutes) {
    if (minutes < DAYS_FROM * DAY) {
      return inHours(minutes);
    }
    int hours = minutes / HOUR;
    String rest = hours % 24 == 0 ? "" : " " + hours % 24 + " h";
    return hours / 24 + " days" + rest;
  }

  /** A while in hours and minutes, however long. */
  static String inHours(int minutes) {
    String hours = minutes < HOUR ? "" : minutes / HOUR + " h";
    String rest = minutes % HOUR == 0 && minutes > 0 ? "" : minutes % HOUR + " min";
    return hours + (hours.isEmpty() || rest.isEmpty() ? "" : " ") + rest;
  }

  /** Hours as the book gives them: {@code 20 h}, {@code 0.5 h}. */
  static String hours(double hours) {
    return BigDecimal.valueOf(hours).stripTrailingZeros().toPlainString() + " h";
  }

  private static String name(Enum<?> dayOrMonth) {
    String name = dayOrMonth.name();
    return name.charAt(0) + name.substring(1, 3).toLowerCase(Locale.ROOT);
  }

  private static String time(LocalDateTime at) {
    return String.format(Locale.ROOT, "%02d:%02d", at.getHour(), at.getMinute());
  }
}
