package strickle.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.AnswerFile;
import strickle.json.CautionAnswer;
import strickle.safety.Cautions;
import strickle.safety.Shown;

/** {@code strickle cautions}: what can hurt somebody in a studio, where, and who says so. */
@Command(
    name = "cautions",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says what to be careful of in the studio of a book, or in a plan: each caution once, with"
          + " the acts, materials, pieces and loads it is about, and its source. It is a reminder,"
          + " not advice: follow your local codes and the products' sheets."
    },
    footer = {
      "",
      "Examples:",
      "  strickle cautions demo",
      "  strickle cautions studio.json --plan week.json",
      "  strickle cautions studio.json --json"
    })
final class CautionsCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();

  /** The plan may be left out, but then all of it. */
  @ArgGroup(exclusive = false)
  private PlanOption present;

  @Option(names = "--json", description = "print the cautions as JSON (strickle-cautions/1)")
  private boolean json;

  CautionsCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Book book = argument.read();
    List<Shown> shown =
        Optional.ofNullable(present)
            .map(option -> Cautions.of(book, option.read(book)))
            .orElseGet(() -> Cautions.of(book));
    here.out()
        .print(
            json
                ? AnswerFile.write(CautionAnswer.FORMAT, CautionAnswer.of(shown))
                : CautionText.whole(book, shown));
  }
}
