package strickle.plan;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import strickle.book.Book;

/** Where plans begin when nobody says. */
public final class UsualStart {

  private UsualStart() {}

  /**
   * With the first climate of the book if that is still to come, as a book whose room is known only
   * from then on is a book of the time from then on; else at the last midnight in its zone.
   */
  public static OffsetDateTime of(Book book, Clock clock) {
    ZoneId zone = book.studio().timeZone();
    ZonedDateTime today = LocalDate.now(clock.withZone(zone)).atStartOfDay(zone);
    return book.studio().climate().stream()
        .map(first -> first.from().atZone(zone))
        .findFirst()
        .filter(today::isBefore)
        .orElse(today)
        .toOffsetDateTime();
  }
}
