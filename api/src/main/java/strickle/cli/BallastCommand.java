package strickle.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.AnswerFile;
import strickle.json.BallastAnswer;

/** {@code strickle ballast}: what to lay on a core, and how hard the mix presses. */
@Command(
    name = "ballast",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says how hard wet mix lifts a core that hangs in it or is sealed on the mould's floor, what"
          + " to lay on it, and how hard the mix presses on the bottom and on a thin wall. With a"
          + " book: the ballast of all its cores."
    },
    footer = {
      "",
      "Examples:",
      "  strickle ballast demo",
      "  strickle ballast --displaced \"2.6 l\" --mass 140 --density 2115",
      "  strickle ballast --core cylinder:radius=50,height=80 --density 2250 --sealed",
      "  strickle ballast --depth \"8 in\" --wall \"12 in\" --density \"140 lb/ft3\" --units us"
    })
final class BallastCommand implements Runnable {

  private final Surroundings here;

  @Parameters(
      paramLabel = "BOOK",
      arity = "0..1",
      description = "the studio book, a JSON file, or the word demo; may be left out")
  private String book;

  @Mixin private final UnitsOption units = new UnitsOption();
  @Mixin private final BallastOptions options = new BallastOptions();

  @Option(names = "--json", description = "print the answer as JSON (strickle-ballast/1)")
  private boolean json;

  BallastCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Measures measures = units.read(values);
    Optional<BallastAnswer> asked = options.read(values);
    if (book == null && asked.isEmpty()) {
      String right = "a book, --displaced, --core or --depth";
      throw new Faulty(List.of(new Fault("ballast", "nothing to work out", right)));
    }
    if (book != null && asked.isPresent()) {
      String right = "either a book or measures, as a book's cores have their own";
      throw new Faulty(List.of(new Fault("BOOK", '"' + book + '"', right)));
    }
    BallastAnswer answer = asked.orElseGet(() -> BallastAnswer.of(read()));
    here.out()
        .print(
            json
                ? AnswerFile.write(BallastAnswer.FORMAT, answer)
                : BallastText.of(answer, measures));
  }

  private Book read() {
    return BookArgument.read(book);
  }
}
