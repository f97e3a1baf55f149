package strickle.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Person;

/** The option {@code --person}: one person of the book. */
final class PersonOption {

  private static final String NAME = "--person";

  @Option(
      names = NAME,
      paramLabel = "ID",
      description = "only what this person of the book does; everybody when left out")
  private String given;

  /**
   * Reads the option.
   *
   * @throws Faulty when nobody in the book has that id
   */
  Optional<String> read(Book book) {
    List<String> people = book.people().stream().map(Person::id).toList();
    if (given != null && !people.contains(given)) {
      String right = "a person of the book: " + String.join(", ", people);
      throw new Faulty(List.of(new Fault(NAME, '"' + given + '"', right)));
    }
    return Optional.ofNullable(given);
  }
}
