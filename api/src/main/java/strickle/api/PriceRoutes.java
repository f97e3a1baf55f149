package strickle.api;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.json.PriceFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
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

/** What each piece costs and what to ask. */
final class PriceRoutes {

  private static final BigDecimal USUAL_MARGIN = BigDecimal.valueOf(30);

  private PriceRoutes() {}

  /** The route. */
  static Route prices() {
    Operation operation =
        Operation.of(
                "GET",
                "/api/prices",
                "readPrices",
                MoneyRoutes.TOPIC,
                "What each piece costs and what to ask.",
                "By the typical run, or by the lots of a plan.")
            .with(PresentPlan.OPTIONAL)
            .answering(Answer.of(Status.OK, "The prices.", PriceFile.SHAPE));
    for (Parameter parameter : parameters()) {
      operation = operation.with(parameter);
    }
    return new Route(operation, PriceRoutes::answer);
  }

  private static List<Parameter> parameters() {
    return List.of(
        number(
            "margin",
            "The profit wanted, in percent of what the buyer pays, 0 to under 100; 30 without it."),
        number("ending", "What suggested prices end in; 0 without it."),
        number("every", "How far suggested prices lie apart; 1 without it."),
        number("markup", "Also the price for this profit in percent of the full cost."),
        number("hourly", "Also the price at which its maker earns so much by the hour."),
        number("discount", "Also what so many percent off the list price do."),
        Parameter.query(
            "bundle",
            Parameter.Kind.TEXT,
            "Also what these pieces bring together at \"bundlePrice\": ids with how many of each.",
            "tray-slate=2,tray-ash=1"),
        number("bundlePrice", "The list price of the bundle."),
        Parameter.query(
            "fair",
            Parameter.Kind.TEXT,
            "Also the table cost of this fair, spread over what is expected to sell there.",
            "spring-fair"));
  }

  private static Parameter number(String name, String text) {
    return Parameter.query(name, Parameter.Kind.NUMBER, text, "0");
  }

  private static Reply answer(Call call) {
    return Thinking.told(() -> Reply.json(Status.OK, PriceFile.write(found(call))));
  }

  private static Prices found(Call call) {
    PriceRequest request =
        new PriceRequest(
            call.decimal("margin").orElse(USUAL_MARGIN),
            call.decimal("ending").orElse(BigDecimal.ZERO),
            call.decimal("every").orElse(BigDecimal.ONE),
            call.decimal("markup"),
            call.decimal("hourly"),
            call.decimal("discount"));
    Optional<PresentPlan> present = PresentPlan.underWayIfAsked(call);
    Book book = present.map(PresentPlan::book).orElseGet(() -> call.studio().now().book());
    Optional<Plan> plan = present.map(PresentPlan::plan);
    Prices prices =
        plan.map(one -> Pricing.planned(book, request, one))
            .orElseGet(() -> Pricing.standard(book, request));
    MinutesOfPiece minutes =
        plan.<MinutesOfPiece>map(one -> PlannedMinutes.of(book, one))
            .orElseGet(() -> new StandardMinutes(book));
    Prices bundled =
        bundle(call)
            .map(bundle -> prices.with(Bundling.of(book, request, bundle, minutes)))
            .orElse(prices);
    return call.query("fair")
        .map(fair -> bundled.with(FairTable.of(book, fair, minutes)))
        .orElse(bundled);
  }

  private static Optional<BundleRequest> bundle(Call call) {
    Optional<String> items = call.query("bundle");
    Optional<BigDecimal> price = call.decimal("bundlePrice");
    if (items.isPresent() != price.isPresent()) {
      String missing = items.isPresent() ? "bundlePrice" : "bundle";
      throw Refusal.malformed(missing, "nothing", "both bundle and bundlePrice, or neither");
    }
    return items.map(text -> new BundleRequest(BundleRequest.items(text), price.orElseThrow()));
  }
}
