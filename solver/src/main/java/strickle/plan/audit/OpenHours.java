package strickle.plan.audit;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Stream;
import strickle.book.Person;
import strickle.book.SpecialDay;
import strickle.book.Window;

/**
 * When a person works: the windows of each weekday, replaced on the dates that have hours of their
 * own. Where one window ends as the next begins (at midnight, say) the person may work through.
 */
final class OpenHours {

  /** A window in minutes since 1970, end exclusive. */
  private record Open(long start, long end) {}

  private final Person person;
  private final Map<LocalDate, List<Window>> special = new HashMap<>();
  private final ZonedMinutes time;

  OpenHours(Person person, ZonedMinutes time) {
    this.person = person;
    this.time = time;
    for (SpecialDay day : person.exceptions()) {
      special.put(day.date(), day.hours());
    }
  }

  /** Whether the person is at work from one minute to another without a break. */
  boolean isOpen(long start, long end) {
    long reached = start;
    while (reached < end) {
      OptionalLong closes = closes(reached);
      if (closes.isEmpty()) {
        return false;
      }
      reached = closes.getAsLong();
    }
    return true;
  }

  /** Whether a window ends at this minute. */
  boolean isWindowEnd(long minute) {
    return around(minute).anyMatch(open -> open.end() == minute);
  }

  /**
   * From which minute on the person, done with one window, is there again, if ever: the start of
   * the next window, or at once where a clock change has pushed it into the one before.
   */
  OptionalLong backAt(long closing) {
    // A weekday comes round every seven days, and each special date can spoil one of its turns.
    int enough = 7 * (special.size() + 1) + 2;
    LocalDate from = time.date(closing).minusDays(1);
    return Stream.concat(days(from, enough), special.keySet().stream())
        .flatMap(this::on)
        .filter(open -> open.end() > closing)
        .mapToLong(open -> Math.max(open.start(), closing))
        .min();
  }

  private OptionalLong closes(long minute) {
    return around(minute)
        .filter(open -> open.start() <= minute && minute < open.end())
        .mapToLong(Open::end)
        .max();
  }

  /** The windows of this date and its neighbours: a clock change may push one over midnight. */
  private Stream<Open> around(long minute) {
    return days(time.date(minute).minusDays(1), 3).flatMap(this::on);
  }

  private static Stream<LocalDate> days(LocalDate first, int count) {
    return Stream.iterate(first, day -> day.plusDays(1)).limit(count);
  }

  private Stream<Open> on(LocalDate date) {
    List<Window> weekly = person.hours().getOrDefault(date.getDayOfWeek(), List.of());
    return special.getOrDefault(date, weekly).stream()
        .map(w -> new Open(minute(date, w.startMinute()), minute(date, w.endMinute())))
        .filter(open -> open.start() < open.end());
  }

  private long minute(LocalDate date, int minuteOfDay) {
    return time.minute(date.atStartOfDay().plusMinutes(minuteOfDay));
  }
}
