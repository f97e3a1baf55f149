package strickle.cli;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.PriceFile;
import strickle.price.PriceRequest;
import strickle.price.Prices;
import strickle.price.Pricing;

/** {@code strickle price}: says what each piece costs and what to ask. */
@Command(
    name = "price",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says what a good piece costs, down to minutes, material, labour, wear and overhead, and for"
          + " every channel what it brings and what to ask. With a plan it goes by the lots of the"
          + " plan, and says how and why that differs from the typical run."
    },
    footer = {
      "",
      "Examples:",
      "  strickle price demo",
      "  strickle price studio.json --margin 40 --ending 0.99",
      "  strickle price studio.json --plan week.json",
      "  strickle price studio.json --json > prices.json"
    })
final class PriceCommand implements Runnable {

  private static final BigDecimal USUAL_MARGIN = BigDecimal.valueOf(30);
  private static final String MARGIN = "--margin";
  private static final String ENDING = "--ending";

  /** What the prices call their request, and the command line does. */
  private static final Map<String, String> OPTIONS =
      Map.of(".marginPercent", MARGIN, ".ending", ENDING);

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();

  @Option(
      names = MARGIN,
      paramLabel = "PERCENT",
      description = {
        "the profit wanted, in percent of what the buyer pays, 0 to under 100; 30 when left out"
      })
  private String margin;

  @Option(
      names = ENDING,
      paramLabel = "AMOUNT",
      description = "what suggested prices end in, such as 0.99; 0.00 when left out")
  private String ending;

  @Option(names = "--json", description = "print the prices as JSON (strickle-prices/1)")
  private boolean json;

  /** The plan may be left out, but then all of it. */
  @ArgGroup(exclusive = false)
  private PlanOption present;

  PriceCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<BigDecimal> wanted = values.decimal(MARGIN, margin);
    Optional<BigDecimal> end = values.decimal(ENDING, ending);
    values.done();
    here.out()
        .print(
            OptionNames.told(
                OPTIONS, () -> answer(wanted.orElse(USUAL_MARGIN), end.orElse(BigDecimal.ZERO))));
  }

  private String answer(BigDecimal wanted, BigDecimal end) {
    PriceRequest request = new PriceRequest(wanted, end);
    Book book = argument.read();
    Prices prices =
        present == null
            ? Pricing.standard(book, request)
            : Pricing.planned(book, request, present.readUnderWay(book));
    return json ? PriceFile.write(prices) : PriceText.of(book, request, prices);
  }
}
