package strickle.api;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.json.AnswerFile;
import strickle.json.FairFile;
import strickle.json.ShoppingFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.plan.Plan;
import strickle.plan.UsualStart;
import strickle.price.Sensitivity;
import strickle.price.SensitivityCheck;
import strickle.price.SensitivityRequest;
import strickle.price.Target;
import strickle.price.TargetCheck;
import strickle.price.TargetRequest;
import strickle.price.fair.FairAnswer;
import strickle.price.fair.FairBuilding;
import strickle.price.fair.FairRequest;
import strickle.supply.Shopping;
import strickle.supply.ShoppingList;

/** Prices, targets, fairs and shopping. */
final class MoneyRoutes {

  static final String TOPIC = "Money";
  private static final long USUAL_SCHEDULES = 500;
  private static final long MOST_SCHEDULES = 5_000;
  private static final String TARGET = "strickle-target/1";
  private static final String SENSITIVITY = "strickle-sensitivity/1";

  /**
   * A fair to build for.
   *
   * @param fair its id
   * @param budget money there is for packs of material; as much as is needed without it
   * @param from the first moment that may be planned, local; as for a plan without it
   * @param orderingFrom from when on what is short in stock can be ordered, local; when the plan
   *     begins without it
   * @param schedules how many schedules each plan looks at, 1 to 5000; 500 without it
   * @param seed where the search's chance begins; 0 without it
   */
  public record FairWanted(
      String fair,
      Optional<BigDecimal> budget,
      Optional<LocalDateTime> from,
      Optional<LocalDateTime> orderingFrom,
      OptionalLong schedules,
      OptionalLong seed) {

    /** Refuses more effort than a request may take. */
    public FairWanted {
      List<Fault> faults = new ArrayList<>();
      Wanted.checkRange(".schedules", schedules, 1, MOST_SCHEDULES, faults);
      PlanRoutes.must(faults);
    }
  }

  private final Thinking thinking;
  private final Clock clock;

  private MoneyRoutes(Thinking thinking, Clock clock) {
    this.thinking = thinking;
    this.clock = clock;
  }

  /** The routes. */
  static List<Route> of(Thinking thinking, Clock clock) {
    MoneyRoutes routes = new MoneyRoutes(thinking, clock);
    return List.of(
        PriceRoutes.prices(),
        new Route(
            operation(
                    "POST",
                    "/api/target",
                    "checkTarget",
                    "Whether a piece holds a margin at a price.",
                    "Its largest costs, and for every lever the value at which it would.")
                .with(PresentPlan.OPTIONAL)
                .taking(
                    Shape.of(TargetRequest.class),
                    "{\"piece\": \"tray-slate\", \"channel\": \"own-table\", \"price\": 38,"
                        + " \"marginPercent\": 40}")
                .answering(
                    Answer.of(Status.OK, "What came out.", new Shape.Of(Target.class, TARGET))),
            MoneyRoutes::target),
        new Route(
            operation(
                    "POST",
                    "/api/sensitivity",
                    "checkSensitivity",
                    "Which numbers move the profit most.",
                    "Of one piece, or of all that is ordered.")
                .with(PresentPlan.OPTIONAL)
                .taking(
                    Shape.of(SensitivityRequest.class),
                    "{\"channel\": \"own-table\", \"byPercent\": 10, \"most\": 5}")
                .answering(
                    Answer.of(
                        Status.OK, "The numbers.", new Shape.Of(Sensitivity.class, SENSITIVITY))),
            MoneyRoutes::sensitivity),
        new Route(
            operation(
                    "POST",
                    "/api/fair",
                    "buildFair",
                    "What to bring to a fair.",
                    "By demand, forms, hours, materials and money. Nothing is changed.")
                .taking(Shape.of(FairWanted.class), "{\"fair\": \"spring-fair\"}")
                .answering(Answer.of(Status.OK, "What to bring.", FairFile.SHAPE)),
            routes::fair),
        new Route(
            operation(
                    "GET",
                    "/api/shopping",
                    "readShopping",
                    "What to buy for a plan, and when.",
                    "In whole packs, in time for what needs them.")
                .with(PresentPlan.PARAMETER)
                .with(
                    Parameter.query(
                        "now",
                        Parameter.Kind.DATE,
                        "From which day on things can be ordered; as the plan waits for materials,"
                            + " or when it begins or was laid out anew, without it.",
                        "2027-04-02"))
                .with(
                    Parameter.query(
                        "counted",
                        Parameter.Kind.TEXT,
                        "When the stock of the book was counted, a local time: what began before has"
                            + " left it already. Without it the stock is as it was before the plan"
                            + " began, with what has been bought since.",
                        "2027-04-02T18:00"))
                .answering(Answer.of(Status.OK, "The list.", ShoppingFile.SHAPE)),
            MoneyRoutes::shopping));
  }

  private static Operation operation(
      String method, String path, String id, String summary, String text) {
    return Operation.of(method, path, id, TOPIC, summary, text);
  }

  private static Reply target(Call call) {
    TargetRequest request = call.body(TargetRequest.class);
    Optional<PresentPlan> present = PresentPlan.underWayIfAsked(call);
    Target target =
        Thinking.told(() -> TargetCheck.of(book(call, present), request, plan(present)));
    return Reply.json(Status.OK, AnswerFile.write(TARGET, target));
  }

  private static Reply sensitivity(Call call) {
    SensitivityRequest request = call.body(SensitivityRequest.class);
    Optional<PresentPlan> present = PresentPlan.underWayIfAsked(call);
    Sensitivity answer =
        Thinking.told(() -> SensitivityCheck.of(book(call, present), request, plan(present)));
    return Reply.json(Status.OK, AnswerFile.write(SENSITIVITY, answer));
  }

  private static Book book(Call call, Optional<PresentPlan> present) {
    return present.map(PresentPlan::book).orElseGet(() -> call.studio().now().book());
  }

  private static Optional<Plan> plan(Optional<PresentPlan> present) {
    return present.map(PresentPlan::plan);
  }

  private Reply fair(Call call) {
    FairWanted wanted = call.body(FairWanted.class);
    Book book = call.studio().now().book();
    return Reply.json(Status.OK, FairFile.write(built(thinking, clock, book, wanted).build()));
  }

  /** What to bring to a fair, with the book and the plan of it, held against their rules. */
  static FairAnswer built(Thinking thinking, Clock clock, Book book, FairWanted wanted) {
    FairAnswer answer = thinking.of(() -> FairBuilding.of(book, request(clock, book, wanted)));
    Plan plan = Laying.audited(answer.book(), answer.plan());
    plan.orderingFrom().ifPresent(at -> Laying.mustWait(answer.book(), plan, at));
    return answer;
  }

  private static FairRequest request(Clock clock, Book book, FairWanted wanted) {
    OffsetDateTime from =
        wanted
            .from()
            .map(at -> PlanRoutes.in(book, at))
            .orElseGet(() -> UsualStart.of(book, clock));
    return new FairRequest(
        wanted.fair(),
        wanted.budget(),
        from,
        wanted.orderingFrom().map(at -> PlanRoutes.in(book, at)).orElse(from),
        wanted.schedules().orElse(USUAL_SCHEDULES),
        wanted.seed().orElse(0));
  }

  private static Reply shopping(Call call) {
    PresentPlan present = PresentPlan.of(call);
    Book book = present.book();
    Plan plan = present.plan();
    OffsetDateTime now =
        call.date("now")
            .map(day -> PlanRoutes.in(book, day.atStartOfDay()))
            .orElseGet(() -> Shopping.ordering(plan));
    ShoppingList list =
        call.time("counted")
            .map(time -> Shopping.counted(book, plan, now, PlanRoutes.in(book, time)))
            .orElseGet(() -> Shopping.of(book, plan, now));
    return Reply.json(Status.OK, ShoppingFile.write(list));
  }
}
