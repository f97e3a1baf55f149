package strickle.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Parameters;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookFile;

/** The argument BOOK: the path of a studio book, or the word demo. */
final class BookArgument {

  private static final String DEMO = "demo";

  @Parameters(
      paramLabel = "BOOK",
      description = {
        "the studio book, a JSON file; or the word demo, for a made-up studio"
            + " (a file of that name is ./demo)"
      })
  private String given = "";

  /**
   * Reads the book.
   *
   * @throws Faulty with everything that is wrong with it
   */
  Book read() {
    return isDemo() ? Demo.book(Size.MEDIUM) : BookFile.read(path());
  }

  /** The file it is read from; none for the demo. */
  Optional<Path> file() {
    return isDemo() ? Optional.empty() : Optional.of(path());
  }

  /** What was given. */
  String text() {
    return given;
  }

  /**
   * Where its plans begin when nobody says: at the last midnight in its zone, or where the demo
   * does.
   */
  OffsetDateTime start(ZoneId zone, Clock clock) {
    return isDemo()
        ? Demo.start()
        : LocalDate.now(clock.withZone(zone)).atStartOfDay(zone).toOffsetDateTime();
  }

  private boolean isDemo() {
    return DEMO.equals(given);
  }

  private Path path() {
    return Paths.of("BOOK", given, "the path of a studio book");
  }
}
