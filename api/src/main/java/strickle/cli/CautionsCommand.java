package strickle.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.AnswerFile;
import strickle.safety.Caution;
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

  private static final String FORMAT = "strickle-cautions/1";

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();

  /** The plan may be left out, but then all of it. */
  @ArgGroup(exclusive = false)
  private PlanOption present;

  @Option(names = "--json", description = "print the cautions as JSON (strickle-cautions/1)")
  private boolean json;

  /** The file of them. */
  private record Answer(List<One> cautions, String follow) {}

  private record One(
      String caution, String brief, String more, String source, List<String> where) {}

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
        .print(json ? AnswerFile.write(FORMAT, answer(shown)) : CautionText.whole(book, shown));
  }

  private static Answer answer(List<Shown> shown) {
    return new Answer(shown.stream().map(CautionsCommand::one).toList(), Caution.FOLLOW);
  }

  private static One one(Shown shown) {
    Caution c = shown.caution();
    return new One(c.title(), c.brief(), c.more(), c.source(), shown.where());
  }
}
