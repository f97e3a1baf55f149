package strickle.api;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Piece;
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

  private static final Map<String, String> REQUEST =
      Map.of(
          ".marginPercent", "margin",
          ".ending", "ending",
          ".every", "every",
          ".markupPercent", "markup",
          ".hourly", "hourly",
          ".discountPercent", "discount",
          ".fair", "fair");
  private static final Map<String, String> BUNDLE =
      Map.of(".items", "bundle", ".price", "bundlePrice");
  private static final Map<String, String> PRICE = Map.of(".price", "price");

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
        Parameter.query(
            "piece",
            Parameter.Kind.TEXT,
            "Only this piece, by id; all of them without it.",
            "tray"),
        number("price", "As if so much were the list price of that piece; its own without it."),
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
    return Thinking.told(
        () ->
            Reply.json(
                Status.OK,
                call.told(() -> PriceFile.write(Queries.told(REQUEST, () -> found(call))))));
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
    Book kept = present.map(PresentPlan::book).orElseGet(() -> call.studio().now().book());
    Optional<String> piece = piece(call, kept);
    Book book =
        call.decimal("price")
            .map(price -> Queries.told(PRICE, () -> priced(kept, piece, price)))
            .orElse(kept);
    Optional<Plan> plan = present.map(PresentPlan::plan);
    Prices all =
        plan.map(one -> Pricing.planned(book, request, one))
            .orElseGet(() -> Pricing.standard(book, request));
    Prices prices = piece.map(id -> only(all, id)).orElse(all);
    MinutesOfPiece minutes =
        plan.<MinutesOfPiece>map(one -> PlannedMinutes.of(book, one))
            .orElseGet(() -> new StandardMinutes(book));
    Prices bundled =
        Queries.told(
            BUNDLE,
            () ->
                bundle(call)
                    .map(bundle -> prices.with(Bundling.of(book, request, bundle, minutes)))
                    .orElse(prices));
    return call.query("fair")
        .map(fair -> bundled.with(FairTable.of(book, fair, minutes)))
        .orElse(bundled);
  }

  private static Optional<String> piece(Call call, Book book) {
    Optional<String> piece = call.query("piece");
    List<String> ids = book.pieces().stream().map(Piece::id).toList();
    if (!piece.stream().allMatch(ids::contains)) {
      String right = "the id of a piece in the book";
      throw Refusal.malformed("piece", Call.shown(piece.orElseThrow()), right);
    }
    return piece;
  }

  private static Prices only(Prices all, String piece) {
    return new Prices(
        all.currency(),
        all.basis(),
        all.pieces().stream().filter(one -> one.piece().equals(piece)).toList(),
        all.plan(),
        all.bundle(),
        all.fair());
  }

  private static Book priced(Book book, Optional<String> piece, BigDecimal price) {
    String id =
        piece.orElseThrow(
            () -> Refusal.malformed("piece", "nothing", "the piece that has this price"));
    List<Piece> pieces =
        book.pieces().stream().map(one -> one.id().equals(id) ? priced(one, price) : one).toList();
    return new Book(
        book.studio(),
        book.people(),
        book.stations(),
        book.forms(),
        book.moulds(),
        book.materials(),
        book.mixes(),
        pieces,
        book.orders(),
        book.channels(),
        book.fairs(),
        book.pins());
  }

  private static Piece priced(Piece one, BigDecimal price) {
    return new Piece(
        one.id(),
        one.name(),
        one.mould(),
        one.mix(),
        one.goodPercent(),
        one.onHand(),
        one.typicalRun(),
        one.route(),
        one.finalDryHours(),
        one.packing(),
        Optional.of(price),
        one.leftoverValue());
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
