package strickle.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.demo.Generator;
import strickle.json.BookFile;

/** {@code strickle demo}: makes up a studio book. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Makes up a studio book of any size, valid and possible to plan: the same castings and seed"
          + " give the same book everywhere. Its plans begin on 2027-03-01."
    },
    footer = {
      "",
      "Examples:",
      "  strickle demo --castings 30 --seed 1 --out made-up.json",
      "  strickle plan made-up.json --from 2027-03-01",
      "  strickle demo --castings 5 --seed 2"
    })
final class DemoCommand implements Runnable {

  private final Surroundings here;

  @Option(
      names = "--castings",
      paramLabel = "N",
      required = true,
      description = "how many castings its orders need, 1 to " + Generator.MOST_CASTINGS)
  private String castings;

  @Option(
      names = "--seed",
      paramLabel = "N",
      required = true,
      description = "which of the many books of that size, any whole number")
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
    values.done();
    Optional<OutFile> file = Optional.ofNullable(out).map(OutFile::at);
    Book book = Generator.book(Math.toIntExact(size.orElseThrow()), which.orElseThrow());
    String text = BookFile.write(book);
    file.ifPresentOrElse(place -> place.write(text), () -> here.out().print(text));
  }
}
