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
import strickle.plan.History;

/**
 * When a person works: the windows of each weekday, replaced on the dates that have hours of their
 * own. Where one window ends as the next begins (at midnight, say) the person may work through.
 */
final class OpenHours {

  /** A window in minutes since 1970, end exclusive. */
  private record Open(long start, long end) {}

  private static final long DAY = 24 * 60;

  private final Person person;
  private final Map<LocalDate, List<Window>> special = new HashMap<>();
  private final ZonedMinutes time;

  /** When the person is away, whatever the hours. */
  private final List<Open> away;

  OpenHours(Person person, ZonedMinutes time) {
    this(person, time, List.of());
  }

  private OpenHours(Person person, ZonedMinutes time, List<Open> away) {
    this.person = person;
    this.time = time;
    this.away = away;
    for (SpecialDay day : person.exceptions()) {
      special.put(day.date(), day.hours());
    }
  }

  /** The hours of a person without the absences that a plan knows of. */
  static OpenHours of(Person person, Facts facts) {
    List<Open> away =
        facts.history().map(History::away).orElse(List.of()).stream()
            .filter(one -> one.person().equals(person.id()))
            .map(one -> new Open(ZonedMinutes.minute(one.from()), ZonedMinutes.minute(one.to())))
            .toList();
    return new OpenHours(person, facts.time(), away);
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
    LocalDate from = time.date(closing).minusDays(1);
    long gone = away.stream().mapToLong(open -> (open.end() - closing) / DAY + 2).max().orElse(0);
    int enough = 7 * (special.size() + 1) + 2 + (int) Math.max(0, gone);
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
        .flatMap(this::there)
        .filter(open -> open.start() < open.end());
  }

  /** What is left of a window with every absence cut out of it. */
  private Stream<Open> there(Open window) {
    Stream<Open> left = Stream.of(window);
    for (Open gone : away) {
      left =
          left.flatMap(
                  open ->
                      Stream.of(
                          new Open(open.start(), Math.min(open.end(), gone.start())),
                          new Open(Math.max(open.start(), gone.end()), open.end())))
              .filter(open -> open.start() < open.end());
    }
    return left;
  }

  private long minute(LocalDate date, int minuteOfDay) {
    return time.minute(date.atStartOfDay().plusMinutes(minuteOfDay));
  }
}
