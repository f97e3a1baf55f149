package strickle.cli;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Book;

/** The option {@code --from}: the first moment that may be planned. */
final class StartOption {

  private static final String NAME = "--from";

  @Option(
      names = NAME,
      paramLabel = "DATE",
      description = {
        "the first moment that may be planned, in the studio's time zone: a date such as"
            + " 2027-04-05 or a date with a time such as 2027-04-05T09:00;"
            + " when left out, today, or the first climate of the book if that is still to come"
            + " (demo: the Monday its plans begin)"
      })
  private String given;

  /** Reads the option, before the book and its time zone are known. */
  Optional<LocalDateTime> read(Given values) {
    return values.moment(NAME, given);
  }

  /**
   * The moment that a local time is in the studio of a book; one that a clock change skips is so
   * much later.
   */
  static OffsetDateTime moment(
      Optional<LocalDateTime> local, BookArgument argument, Book book, Clock clock) {
    ZoneId zone = book.studio().timeZone();
    return local
        .map(time -> time.atZone(zone).toOffsetDateTime())
        .orElseGet(() -> argument.start(book, clock));
  }
}
