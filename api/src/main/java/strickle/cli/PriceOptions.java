package strickle.cli;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.price.BundleRequest;
import strickle.price.PriceRequest;

/** What is asked of prices, as options of the command line. */
final class PriceOptions {

  private static final BigDecimal USUAL_MARGIN = BigDecimal.valueOf(30);
  private static final String MARGIN = "--margin";
  private static final String MARKUP = "--markup";
  private static final String HOURLY = "--hourly";
  private static final String ENDING = "--ending";
  private static final String EVERY = "--every";
  private static final String DISCOUNT = "--discount";
  private static final String BUNDLE = "--bundle";
  private static final String BUNDLE_PRICE = "--bundle-price";

  /** What a price request calls its parts, and the command line does. */
  static final Map<String, String> NAMES =
      Map.of(
          ".marginPercent", MARGIN,
          ".markupPercent", MARKUP,
          ".hourly", HOURLY,
          ".ending", ENDING,
          ".every", EVERY,
          ".discountPercent", DISCOUNT,
          ".fair", "--fair");

  /** The same of a bundle. */
  static final Map<String, String> BUNDLE_NAMES =
      Map.of(
          ".items", BUNDLE,
          ".price", BUNDLE_PRICE,
          ".marginPercent", MARGIN,
          ".ending", ENDING,
          ".every", EVERY);

  @Option(
      names = MARGIN,
      paramLabel = "PERCENT",
      description = {
        "the profit wanted, in percent of what the buyer pays, 0 to under 100; 30 when left out"
      })
  private String margin;

  @Option(
      names = MARKUP,
      paramLabel = "PERCENT",
      description = "also the price for this profit in percent of the full cost")
  private String markup;

  @Option(
      names = HOURLY,
      paramLabel = "AMOUNT",
      description = "also the price at which its maker earns so much by the hour")
  private String hourly;

  @Option(
      names = ENDING,
      paramLabel = "AMOUNT",
      description = "what suggested prices end in, such as 0.99; 0.00 when left out")
  private String ending;

  @Option(
      names = EVERY,
      paramLabel = "AMOUNT",
      description = {
        "how far suggested prices lie apart, 1 when left out: --ending 9 --every 10 gives 39, 49 …"
      })
  private String every;

  @Option(
      names = DISCOUNT,
      paramLabel = "PERCENT",
      description = "also what so much off the list price does")
  private String discount;

  @Option(
      names = BUNDLE,
      paramLabel = "PIECE=N,…",
      description = "also what these pieces bring together at --bundle-price: dish=2,cup=4")
  private String bundle;

  @Option(names = BUNDLE_PRICE, paramLabel = "AMOUNT", description = "the list price of the bundle")
  private String bundlePrice;

  /** The request; faults in words of the options. */
  PriceRequest request(Given values) {
    Optional<BigDecimal> wanted = values.decimal(MARGIN, margin);
    Optional<BigDecimal> more = values.decimal(MARKUP, markup);
    Optional<BigDecimal> wage = values.decimal(HOURLY, hourly);
    Optional<BigDecimal> end = values.decimal(ENDING, ending);
    Optional<BigDecimal> apart = values.decimal(EVERY, every);
    Optional<BigDecimal> off = values.decimal(DISCOUNT, discount);
    values.done();
    return OptionNames.told(
        NAMES,
        () ->
            new PriceRequest(
                wanted.orElse(USUAL_MARGIN),
                end.orElse(BigDecimal.ZERO),
                apart.orElse(BigDecimal.ONE),
                more,
                wage,
                off));
  }

  /** The bundle, if one is asked about. */
  Optional<BundleRequest> bundle(Given values) {
    Optional<BigDecimal> price = values.decimal(BUNDLE_PRICE, bundlePrice);
    if (bundle == null && bundlePrice == null) {
      return Optional.empty();
    }
    String both = "both --bundle and --bundle-price, or neither";
    values.must(bundle != null, BUNDLE_PRICE, String.valueOf(bundlePrice), both);
    values.must(bundlePrice != null, BUNDLE, String.valueOf(bundle), both);
    values.done();
    return Optional.of(
        OptionNames.told(
            BUNDLE_NAMES,
            () -> new BundleRequest(BundleRequest.items(bundle), price.orElseThrow())));
  }
}
