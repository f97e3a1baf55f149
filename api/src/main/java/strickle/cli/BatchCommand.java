package strickle.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import strickle.book.Amount;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.AnswerFile;
import strickle.json.BatchAnswer;
import strickle.json.BatchFilling;
import strickle.json.BatchStock;
import strickle.json.BatchWork;
import strickle.mix.Weighing;

/** {@code strickle batch}: what to weigh for moulds or a volume. */
@Command(
    name = "batch",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Works a batch out: what to weigh for moulds of a book or for any volume, from a mix of the"
          + " book, a recipe by parts, or a batch that was mixed once. It says what each material"
          + " is of the dry mix, the cement, the water and the whole, checks the pigment, tells how"
          + " many castings a bag or what is on hand makes, and what could take what is left over."
    },
    footer = {
      "",
      "Examples:",
      "  strickle batch studio.json --mix white --mould dish=2 --step-grams 1",
      "  strickle batch studio.json --mix white --mould dish=3 --round-up-grams 500",
      "  strickle batch --volume-ml 1180 --dry cement:parts=1,density=3.15,cement=100",
      "      --dry sand:parts=2,density=2.65,cement=0 --water percent=40,of=cement",
      "  strickle batch --volume-ml 2l --past blend:mass=5kg --past water:mass=1.2kg",
      "      --past-filled-ml 2900"
    })
final class BatchCommand implements Runnable {

  private static final String STEP = "--step-grams";
  private static final String ROUND_UP = "--round-up-grams";
  private static final double LEAST_STEP = 0.001;
  private static final double MOST_STEP = 100_000;
  private static final double MOST_ROUND_UP = 1e9;

  private final Surroundings here;

  @Parameters(
      arity = "0..1",
      paramLabel = "BOOK",
      description = "the studio book, or the word demo; may be left out for a batch of no book")
  private String bookText;

  @Mixin private final RecipeOptions recipe = new RecipeOptions();
  @Mixin private final PastOptions past = new PastOptions();
  @Mixin private final FillingOptions filling = new FillingOptions();
  @Mixin private final StockOptions stock = new StockOptions();
  @Mixin private final UnitsOption units = new UnitsOption();

  @Option(
      names = STEP,
      paramLabel = "MASS",
      description = {
        "what the scale counts in; 0.1 when left out. The whole is rounded up to it, never down"
      })
  private String step;

  @Option(
      names = ROUND_UP,
      paramLabel = "MASS",
      description = "round the batch up to a whole multiple of this")
  private String roundUp;

  @Option(names = "--json", description = "print the batch as JSON (strickle-batch/1), metric")
  private boolean json;

  BatchCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<Book> book = Optional.ofNullable(bookText).map(text -> BookArgument.of(text).read());
    Measures measures = units.read(values);
    Optional<Chosen> mix = mix(values, book);
    List<BatchFilling> fillings = filling.read(values, book);
    BatchStock there = stock.read(values, mix);
    Weighing weighing = weighing(values);
    values.done();
    Chosen chosen = mix.orElseThrow();
    Optional<BatchAnswer> answer =
        values.asOptions(() -> work(book, chosen, there, fillings, weighing));
    values.done();
    here.out()
        .print(
            json
                ? AnswerFile.write(BatchAnswer.FORMAT, answer.orElseThrow())
                : BatchText.of(book, chosen, answer.orElseThrow(), measures, weighing.stepGrams()));
  }

  // What is too much at once was asked for by one of two options.
  private static BatchAnswer work(
      Optional<Book> book,
      Chosen chosen,
      BatchStock there,
      List<BatchFilling> fillings,
      Weighing weighing) {
    BatchWork work = new BatchWork(book, chosen.mix(), chosen.materials(), chosen.recipe(), there);
    try {
      return work.answer(fillings, weighing);
    } catch (Faulty faulty) {
      boolean volume = fillings.stream().anyMatch(one -> one.mould().isEmpty());
      throw new Faulty(faulty.faults().stream().map(fault -> named(fault, volume)).toList());
    }
  }

  private static Fault named(Fault fault, boolean volume) {
    boolean much = fault.path().equals(".fillings");
    String path = much ? (volume ? ".volumeMl" : ".mould") : fault.path();
    return new Fault(path, fault.found(), fault.right());
  }

  private Weighing weighing(Given values) {
    double steps =
        mass(values, STEP, step, LEAST_STEP, MOST_STEP, "a mass from 0.001 g to 100 kg")
            .orElse(Weighing.USUAL.stepGrams());
    double up =
        mass(values, ROUND_UP, roundUp, 0, MOST_ROUND_UP, "a mass of at most 1000000 kg")
            .orElse(0.0);
    return new Weighing(steps, up);
  }

  private static Optional<Double> mass(
      Given values, String option, String text, double least, double most, String right) {
    return values
        .amount(option, text, Amount::mass)
        .filter(grams -> values.must(least <= grams && grams <= most, option, text, right));
  }

  private Optional<Chosen> mix(Given values, Optional<Book> book) {
    if (past.given() && recipe.given()) {
      values.fault(new Fault("--past", "a past batch beside another mix", "one of them"));
      return Optional.empty();
    }
    return past.given() ? past.read(values, book) : recipe.read(values, book);
  }
}
