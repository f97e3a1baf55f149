package strickle.cli;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.AnswerFile;
import strickle.plan.Plan;
import strickle.price.Target;
import strickle.price.TargetCheck;
import strickle.price.TargetRequest;

/** {@code strickle target}: whether a piece holds a margin at a price, and what would make it. */
@Command(
    name = "target",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says whether a piece sold through a channel at a price holds a margin, and by how much not;"
          + " its largest costs; and for every lever alone - minutes, run size, good share, mix,"
          + " mould life, fee, price - the value at which it would, or that none does."
    },
    footer = {
      "",
      "Examples:",
      "  strickle target studio.json --piece dish-white --price 38 --channel table --margin 40",
      "  strickle target studio.json --piece dish-white --price 38 --channel table \\",
      "      --plan week.json --reference-price 276"
    })
final class TargetCommand implements Runnable {

  private static final BigDecimal USUAL_MARGIN = BigDecimal.valueOf(30);
  private static final String MARGIN = "--margin";
  private static final String PIECE = "--piece";
  private static final String CHANNEL = "--channel";
  private static final String PRICE = "--price";
  private static final String REFERENCE = "--reference-price";

  private static final Map<String, String> OPTIONS =
      Map.of(
          ".piece", PIECE,
          ".channel", CHANNEL,
          ".price", PRICE,
          ".marginPercent", MARGIN,
          ".referencePrice", REFERENCE);

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();

  @Option(
      names = PIECE,
      paramLabel = "ID",
      required = true,
      description = "what is sold: the id of a piece in the book")
  private String piece;

  @Option(
      names = CHANNEL,
      paramLabel = "ID",
      required = true,
      description = "where it is sold: the id of a channel in the book")
  private String channel;

  @Option(
      names = PRICE,
      paramLabel = "AMOUNT",
      required = true,
      description = "the list price, above 0, in the currency of the book")
  private String price;

  @Option(
      names = MARGIN,
      paramLabel = "PERCENT",
      description = {
        "the profit wanted, in percent of what the buyer pays, 0 to under 100; 30 when left out"
      })
  private String margin;

  @Option(
      names = REFERENCE,
      paramLabel = "AMOUNT",
      description = "what a bought piece costs that it is held against")
  private String reference;

  /** The plan may be left out, but then all of it. */
  @ArgGroup(exclusive = false)
  private PlanOption present;

  @Option(names = "--json", description = "print the answer as JSON (strickle-target/1)")
  private boolean json;

  TargetCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<BigDecimal> asked = values.decimal(PRICE, price);
    Optional<BigDecimal> wanted = values.decimal(MARGIN, margin);
    Optional<BigDecimal> bought = values.decimal(REFERENCE, reference);
    values.done();
    TargetRequest request =
        OptionNames.told(
            OPTIONS,
            () ->
                new TargetRequest(
                    piece, channel, asked.orElseThrow(), wanted.orElse(USUAL_MARGIN), bought));
    Book book = argument.read();
    Optional<Plan> plan = Optional.ofNullable(present).map(option -> option.readUnderWay(book));
    Target target = OptionNames.told(OPTIONS, () -> TargetCheck.of(book, request, plan));
    here.out()
        .print(json ? AnswerFile.write("strickle-target/1", target) : TargetText.of(book, target));
  }
}
