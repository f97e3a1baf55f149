package strickle.cli;

import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.PriceFile;
import strickle.plan.Plan;
import strickle.price.BundleRequest;
import strickle.price.Bundling;
import strickle.price.FairTable;
import strickle.price.MinutesOfPiece;
import strickle.price.PlannedMinutes;
import strickle.price.PriceRequest;
import strickle.price.Prices;
import strickle.price.Pricing;
import strickle.price.StandardMinutes;

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
      "  strickle price studio.json --lines",
      "  strickle price studio.json --margin 40 --ending 0.99",
      "  strickle price studio.json --markup 100 --hourly 25 --discount 10",
      "  strickle price studio.json --bundle dish-white=3 --bundle-price 99",
      "  strickle price studio.json --plan week.json",
      "  strickle price studio.json --json > prices.json"
    })
final class PriceCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PriceOptions options = new PriceOptions();

  @Option(
      names = "--fair",
      paramLabel = "ID",
      description = "also a fair's table cost, spread over what is expected to sell there")
  private String fair;

  /** The plan may be left out, but then all of it. */
  @ArgGroup(exclusive = false)
  private PlanOption present;

  @Option(
      names = "--lines",
      description = "also every line of the cost; with a plan they stand there anyway")
  private boolean lines;

  @Option(names = "--json", description = "print the prices as JSON (strickle-prices/1)")
  private boolean json;

  PriceCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    PriceRequest request = options.request(new Given());
    Optional<BundleRequest> bundle = options.bundle(new Given());
    Book book = argument.read();
    Optional<Plan> plan = Optional.ofNullable(present).map(option -> option.readUnderWay(book));
    Prices prices = prices(book, request, plan, bundle);
    here.out().print(json ? PriceFile.write(prices) : PriceText.of(book, request, prices, lines));
  }

  private Prices prices(
      Book book, PriceRequest request, Optional<Plan> plan, Optional<BundleRequest> bundle) {
    Prices prices =
        OptionNames.told(
            PriceOptions.NAMES,
            () ->
                plan.map(one -> Pricing.planned(book, request, one))
                    .orElseGet(() -> Pricing.standard(book, request)));
    MinutesOfPiece minutes =
        plan.<MinutesOfPiece>map(one -> PlannedMinutes.of(book, one))
            .orElseGet(() -> new StandardMinutes(book));
    if (bundle.isPresent()) {
      prices =
          prices.with(
              OptionNames.told(
                  PriceOptions.BUNDLE_NAMES,
                  () -> Bundling.of(book, request, bundle.get(), minutes)));
    }
    if (fair != null) {
      prices =
          prices.with(
              OptionNames.told(PriceOptions.NAMES, () -> FairTable.of(book, fair, minutes)));
    }
    return prices;
  }
}
