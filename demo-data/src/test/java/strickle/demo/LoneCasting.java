package strickle.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.WaitKind;
import strickle.cure.RoomPace;

/**
 * Sends one casting of a piece through an empty studio, every task at the first minute that anybody
 * who may do it is there, and watches the most-waits.
 */
final class LoneCasting {

  private static final long WEEKS_AHEAD = 26;

  private final Book book;
  private final RoomPace pace;
  private final List<Open> windows;

  LoneCasting(Book book, OffsetDateTime from) {
    this.book = book;
    pace = RoomPace.of(book.studio().climate(), book.studio().timeZone());
    LocalDate first = from.toLocalDate();
    windows =
        first
            .datesUntil(first.plusWeeks(WEEKS_AHEAD))
            .flatMap(date -> book.people().stream().flatMap(person -> windows(person, date)))
            .sorted(Comparator.comparing(Open::start))
            .toList();
  }

  private Stream<Open> windows(Person person, LocalDate date) {
    return person.hoursOn(date).stream()
        .map(w -> new Open(person, at(date, w.startMinute()), at(date, w.endMinute())));
  }

  private Instant at(LocalDate date, int minute) {
    return date.atStartOfDay().plusMinutes(minute).atZone(book.studio().timeZone()).toInstant();
  }

  /** An open window of one person. */
  private record Open(Person person, Instant start, Instant end) {

    Open from(Instant earliest) {
      return start.isBefore(earliest) ? new Open(person, earliest, end) : this;
    }

    boolean holds(Duration minutes) {
      return !start.plus(minutes).isAfter(end);
    }
  }

  /**
   * The moment a casting poured as soon as possible after {@code from} is ready.
   *
   * @throws IllegalStateException when a most-wait cannot be kept, saying which
   */
  Instant ready(Piece piece, Instant from) {
    Mould mould = book.mould(piece.mould());
    Mix mix = book.mix(piece.mix());
    int minutes = mould.prepMinutes() + mix.mixMinutes() + mould.pourMinutes() + mix.washMinutes();
    Instant poured = pourEnd(from, Duration.ofMinutes(minutes));
    Instant setting = poured.minus(Duration.ofMinutes(mix.washMinutes()));
    Instant set = pace.end(setting, mould.setHours());
    Open first = firstOpen(List.of(), set, setting, mould.setAtMostHours());
    Instant end = end(first, mould.demouldMinutes());
    for (Step step : piece.route()) {
      end = after(end, step, mould.cavities());
    }
    return plus(end, piece.finalDryHours());
  }

  private Instant pourEnd(Instant from, Duration minutes) {
    return open(List.of(), from)
        .filter(open -> open.holds(minutes))
        .map(open -> open.start().plus(minutes))
        .findFirst()
        .orElseThrow();
  }

  private Instant after(Instant end, Step step, int pieces) {
    double hours = step.after().hours();
    Instant earliest =
        step.after().kind() == WaitKind.CURE ? pace.end(end, hours) : plus(end, hours);
    Open first = firstOpen(step.by(), earliest, end, step.after().atMostHours());
    return end(first, step.setupMinutes() + pieces * step.minutesEach());
  }

  private Open firstOpen(
      List<String> by, Instant earliest, Instant waitFrom, OptionalDouble atMostHours) {
    Open first = open(by, earliest).findFirst().orElseThrow();
    Instant latest =
        atMostHours.isPresent() ? plus(waitFrom, atMostHours.getAsDouble()) : Instant.MAX;
    if (first.start().isAfter(latest)) {
      throw new IllegalStateException(
          book.studio().name() + ": first at " + first.start() + ", at the latest " + latest);
    }
    return first;
  }

  private Instant end(Open first, int minutes) {
    Duration left = Duration.ofMinutes(minutes);
    for (Open open : open(List.of(first.person().id()), first.start()).toList()) {
      if (open.holds(left)) {
        return open.start().plus(left);
      }
      left = left.minus(Duration.between(open.start(), open.end()));
    }
    throw new IllegalStateException("no end to a task of " + minutes + " minutes");
  }

  /** Windows of some people, none meaning all, from a moment on, in the order they start. */
  private Stream<Open> open(List<String> by, Instant from) {
    return windows.stream()
        .filter(open -> open.end().isAfter(from))
        .filter(open -> by.isEmpty() || by.contains(open.person().id()))
        .map(open -> open.from(from));
  }

  private static Instant plus(Instant from, double hours) {
    return from.plus(Duration.ofMinutes((long) Math.ceil(hours * 60 - 1e-9)));
  }
}
