package strickle.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.demo.Demo;
import strickle.demo.Generator;
import strickle.demo.Size;
import strickle.json.BookFile;

/** {@code strickle demo}: makes up a studio book. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Writes the book of the demo studio, a good one to change into your own; or, with --castings,"
          + " makes one up that is valid and possible to plan: the same castings and seed give the"
          + " same book everywhere. Plans of either begin on 2027-03-01."
    },
    footer = {
      "",
      "Examples:",
      "  strickle demo --out studio.json",
      "  strickle demo --castings 30 --seed 1 --out made-up.json",
      "  strickle plan made-up.json --from 2027-03-01",
      "  strickle demo --castings 5 --seed 2"
    })
final class DemoCommand implements Runnable {

  private static final long FIRST_SEED = 1;

  private final Surroundings here;

  @Option(
      names = "--castings",
      paramLabel = "N",
      description = {
        "make up a book whose orders need so many castings, 1 to " + Generator.MOST_CASTINGS
      })
  private String castings;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "which of the many books of that size, any whole number; 1 when left out")
  private String seed;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the book to this file; to standard output when left out")
  private String out;

  DemoCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<Long> size = values.whole("--castings", castings, 1, Generator.MOST_CASTINGS);
    Optional<Long> which = values.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE);
    values.must(
        seed == null || castings != null,
        "--seed",
        seed,
        "no seed, for the demo studio, or --castings N as well");
    values.done();
    Optional<OutFile> file = Optional.ofNullable(out).map(OutFile::at);
    Book book = book(size, which.orElse(FIRST_SEED));
    String text = BookFile.write(book);
    file.ifPresentOrElse(place -> place.write(text), () -> here.out().print(text));
  }

  private static Book book(Optional<Long> castings, long seed) {
    return castings
        .map(count -> Generator.book(Math.toIntExact(count), seed))
        .orElseGet(() -> Demo.book(Size.MEDIUM));
  }
}
