package strickle.cli;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.json.PromiseFile;
import strickle.plan.Plan;
import strickle.plan.promise.Latest;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.PromiseRequest;
import strickle.plan.promise.Promising;

/** {@code strickle promise}: says when a new order can be ready. */
@Command(
    name = "promise",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says when a new order can be ready without making any present order later, where it goes in"
          + " the week, and how much earlier it could be if others may slip, with who would slip"
          + " and how much. Every date is that of a whole plan that has passed the same check as"
          + " any other."
    },
    footer = {
      "",
      "Examples:",
      "  strickle promise studio.json --plan week.json --piece planter-slate --quantity 4",
      "  strickle promise studio.json --plan week.json --piece planter-slate --quantity 4 \\",
      "      --latest 2027-04-20T17:00 --out new-week.json --book-out new-studio.json"
    })
final class PromiseCommand implements Runnable {

  private static final String OUT = "--out";
  private static final String BOOK_OUT = "--book-out";
  private static final String NO_DATE = ": there is no date that makes nobody later";

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PlanOption present = new PlanOption();
  @Mixin private final PromiseOptions asked = new PromiseOptions();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the plan that keeps the promise and makes nobody later")
  private String out;

  @Option(
      names = BOOK_OUT,
      paramLabel = "FILE",
      description = "write the book with the new order in it, to go with that plan")
  private String bookOut;

  @Option(names = "--json", description = "print the promise as JSON (strickle-promise/1)")
  private boolean json;

  PromiseCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    PromiseRequest request = asked.read();
    Book book = argument.read();
    Plan plan = present.read(book);
    Optional<OutFile> planFile = file(OUT, out);
    Optional<OutFile> bookFile = file(BOOK_OUT, bookOut);
    Promise promise = PromiseOptions.named(() -> Promising.of(book, plan, request));
    offers(promise).forEach(offer -> Audited.plan(offer.book(), offer.plan()));
    here.out().print(json ? PromiseFile.write(promise) : PromiseText.of(book, promise));
    planFile.ifPresent(file -> write(promise, file, offer -> PlanFile.write(offer.plan())));
    bookFile.ifPresent(file -> write(promise, file, offer -> BookFile.write(offer.book())));
  }

  private Optional<OutFile> file(String option, String given) {
    Optional<OutFile> file = Optional.ofNullable(given).map(path -> OutFile.at(option, path));
    file.ifPresent(
        place -> {
          argument.file().ifPresent(book -> place.mustNotBe(book, "book"));
          place.mustNotBe(present.file(), "plan");
        });
    return file;
  }

  /** Everything that is shown. */
  private static Stream<Offer> offers(Promise promise) {
    return Stream.of(
            promise.kept(),
            promise.still(),
            promise.pressed(),
            promise.latest().flatMap(Latest::offer))
        .flatMap(Optional::stream);
  }

  private void write(Promise promise, OutFile file, Function<Offer, String> text) {
    Offer kept =
        promise
            .kept()
            .orElseThrow(() -> new Trouble("nothing is written to " + file.text() + NO_DATE));
    file.write(text.apply(kept));
    // Standard output is the file of the promise then, and nothing else.
    if (!json) {
      here.out().print("\nWritten to " + file.text() + ".\n");
    }
  }
}
