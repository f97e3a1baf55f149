package strickle.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.BookFile;

/** The options {@code --write} and {@code --force}: a book that takes over what was found. */
final class WriteOption {

  private static final String NAME = "--write";

  @Option(
      names = NAME,
      paramLabel = "BOOK2",
      description = "write the book that takes it over to this file; the old book stays as it is")
  private String given;

  @Option(names = "--force", description = "with --write: the file may be the old book itself")
  private boolean force;

  /** Reads the options; empty when nothing is to be written. */
  Optional<OutFile> read(Optional<Path> book) {
    Optional<OutFile> file = Optional.ofNullable(given).map(path -> OutFile.at(NAME, path));
    if (!force) {
      file.ifPresent(place -> book.ifPresent(old -> place.mustNotBe(old, "book")));
    }
    return file;
  }

  /** Writes the book. */
  static void write(OutFile file, Book book) {
    file.write(BookFile.write(book));
  }
}
