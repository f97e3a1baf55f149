package strickle.paper;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import strickle.plan.Spell;

/** Times on paper: always the studio's own, weekdays in English, 24 hours. */
final class Times {

  private static final DateTimeFormatter DAY = pattern("EEEE d MMMM uuuu");
  private static final DateTimeFormatter CLOCK = pattern("HH:mm");
  private static final DateTimeFormatter FULL = pattern("EEE d MMM HH:mm");

  private final ZoneId zone;

  Times(ZoneId zone) {
    this.zone = zone;
  }

  /** The studio's date at a moment. */
  LocalDate date(OffsetDateTime at) {
    return at.atZoneSameInstant(zone).toLocalDate();
  }

  /** "19:37". */
  String clock(OffsetDateTime at) {
    return CLOCK.format(at.atZoneSameInstant(zone));
  }

  /** "Tue 2 Mar 17:16". */
  String full(OffsetDateTime at) {
    return FULL.format(at.atZoneSameInstant(zone));
  }

  /** "18:30–19:37"; what lasts until midnight ends at 24:00. */
  String spell(Spell spell) {
    boolean midnight = spell.end().atZoneSameInstant(zone).toLocalTime().equals(LocalTime.MIDNIGHT);
    return clock(spell.start()) + "–" + (midnight ? "24:00" : clock(spell.end()));
  }

  /** "Monday 1 March 2027". */
  static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** "19:37", of a local time. */
  static String localClock(TemporalAccessor local) {
    return CLOCK.format(local);
  }

  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
