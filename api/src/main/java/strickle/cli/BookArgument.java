package strickle.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import picocli.CommandLine.Parameters;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookFile;
import strickle.plan.UsualStart;

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

  /** The argument of a command whose book may be left out. */
  static BookArgument of(String given) {
    BookArgument argument = new BookArgument();
    argument.given = given;
    return argument;
  }

  /**
   * Reads the book.
   *
   * @throws Faulty with everything that is wrong with it
   */
  Book read() {
    return isDemo() ? Demo.book(Size.MEDIUM) : BookFile.read(path());
  }

  /**
   * Reads a book named in another way.
   *
   * @throws Faulty with everything that is wrong with it
   */
  static Book read(String given) {
    BookArgument argument = new BookArgument();
    argument.given = given;
    return argument.read();
  }

  /** The file it is read from; none for the demo. */
  Optional<Path> file() {
    return isDemo() ? Optional.empty() : Optional.of(path());
  }

  /** What was given. */
  String text() {
    return given;
  }

  /** Where its plans begin when nobody says: where the demo's do, else {@link UsualStart}. */
  OffsetDateTime start(Book book, Clock clock) {
    return isDemo() ? Demo.start() : UsualStart.of(book, clock);
  }

  private boolean isDemo() {
    return DEMO.equals(given);
  }

  private Path path() {
    return Paths.of("BOOK", given, "the path of a studio book");
  }
}
