package strickle.api;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BoundFile;
import strickle.json.Message;
import strickle.json.PromiseFile;
import strickle.json.WhatIfFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Effort;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.promise.Latest;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;
import strickle.plan.promise.PromiseRequest;
import strickle.plan.promise.Promising;
import strickle.plan.whatif.Change;
import strickle.plan.whatif.ChangeText;
import strickle.plan.whatif.Ideas;
import strickle.plan.whatif.Together;
import strickle.plan.whatif.WhatIf;

/** What a plan answers: why an order is late, what can be promised, what a change would bring. */
final class AnswerRoutes {

  private static final String TOPIC = "Answers";
  private static final long USUAL_SCHEDULES = 2_000;
  private static final long MOST_SCHEDULES = 20_000;
  private static final long MOST_SECONDS = 30;
  private static final long ALONE_SCHEDULES = 50;
  private static final int MOST_CHANGES = 20;

  /**
   * What becomes of the orders.
   *
   * @param items in the order of the book; those that are late say why
   */
  public record Reasons(List<OrderOutcome> items) {}

  /**
   * What a buyer asks for.
   *
   * @param piece id of the piece
   * @param quantity how many pieces, 1 to 100000
   * @param latest until when it would have to be ready, local; nothing when the buyer did not say
   * @param order the id the new order is to have; a free one without it
   * @param buyer whom it is for
   * @param schedules how many schedules each search may look at, 1 to 20000; by the size of the
   *     plan without it
   * @param seed where the searches' chance begins; 0 without it
   */
  public record PromiseWanted(
      String piece,
      int quantity,
      Optional<LocalDateTime> latest,
      Optional<String> order,
      Optional<String> buyer,
      OptionalLong schedules,
      OptionalLong seed) {

    /** Refuses more effort than a request may take. */
    public PromiseWanted {
      checkSchedules(schedules);
    }
  }

  /**
   * Changes to be tried.
   *
   * @param changes as "form:tub-a+1", "hours:ana:2027-04-10T09:00-12:00", "helper:2027-04-10",
   *     "room:+2", "batch:12000" or "places:rack+4"; several are tried one by one and all together;
   *     none for what the plan itself suggests
   * @param seconds how long to try all of them, 1 to 30
   * @param schedules how many schedules all of them together may look at instead, 1 to 20000; 2000
   *     without either
   * @param seed where the searches' chance begins; 0 without it
   */
  public record ChangesWanted(
      List<String> changes, OptionalLong seconds, OptionalLong schedules, OptionalLong seed) {

    /** Refuses more than a request may take. */
    public ChangesWanted {
      if (changes.size() > MOST_CHANGES) {
        String right = "at most " + MOST_CHANGES + " at a time";
        throw new Faulty(List.of(new Fault(".changes", changes.size() + " changes", right)));
      }
      List<Fault> faults = new ArrayList<>();
      Wanted.checkRange(".seconds", seconds, 1, MOST_SECONDS, faults);
      Wanted.checkRange(".schedules", schedules, 1, MOST_SCHEDULES, faults);
      if (seconds.isPresent() && schedules.isPresent()) {
        faults.add(new Fault(".schedules", "both", "either schedules or seconds"));
      }
      PlanRoutes.must(faults);
    }

    private Effort effort() {
      return seconds.isPresent()
          ? Effort.ofTime(Duration.ofSeconds(seconds.getAsLong()))
          : Effort.ofSchedules(schedules.orElse(USUAL_SCHEDULES));
    }
  }

  private static void checkSchedules(OptionalLong schedules) {
    List<Fault> faults = new ArrayList<>();
    Wanted.checkRange(".schedules", schedules, 1, MOST_SCHEDULES, faults);
    PlanRoutes.must(faults);
  }

  private final Thinking thinking;

  private AnswerRoutes(Thinking thinking) {
    this.thinking = thinking;
  }

  /** The routes. */
  static List<Route> of(Thinking thinking) {
    AnswerRoutes routes = new AnswerRoutes(thinking);
    return List.of(
        new Route(
            operation("GET", "/api/why", "readWhy", "Why orders are late.", "Order by order.")
                .with(PresentPlan.PARAMETER)
                .answering(Answer.of(Status.OK, "The reasons.", Shape.of(Reasons.class))),
            AnswerRoutes::why),
        new Route(
            operation(
                    "POST",
                    "/api/promise",
                    "promise",
                    "When a new order can be ready.",
                    "Without making any present order later, and how much earlier if others may"
                        + " slip. Nothing is changed.")
                .with(PresentPlan.PARAMETER)
                .taking(
                    Shape.of(PromiseWanted.class), "{\"piece\": \"tray-slate\", \"quantity\": 2}")
                .answering(Answer.of(Status.OK, "The dates.", PromiseFile.SHAPE)),
            routes::promise),
        new Route(
            operation(
                    "POST",
                    "/api/what-if",
                    "tryChanges",
                    "What changes of the studio would bring.",
                    "On the plan, each by itself, with what it costs. Nothing is changed.")
                .with(PresentPlan.PARAMETER)
                .taking(
                    Shape.of(ChangesWanted.class),
                    "{\"changes\": [\"form:tub-a+1\"], \"schedules\": 500}")
                .answering(Answer.of(Status.OK, "What they bring.", WhatIfFile.SHAPE)),
            routes::whatIf),
        new Route(
            operation(
                    "GET",
                    "/api/bound",
                    "readBound",
                    "What no plan can beat.",
                    "For every order alone and for the whole book, and how far the plan is from"
                        + " it.")
                .with(PresentPlan.PARAMETER)
                .with(BookBound.FROM)
                .with(BookBound.COVER)
                .answering(Answer.of(Status.OK, "The bounds.", BoundFile.SHAPE)),
            routes::bound));
  }

  private static Operation operation(
      String method, String path, String id, String summary, String text) {
    return Operation.of(method, path, id, TOPIC, summary, text);
  }

  private static Reply why(Call call) {
    String name = call.query("plan").orElse(PresentPlan.IN_USE);
    Plan plan = PresentPlan.any(call, name);
    return Reply.json(Status.OK, Message.write(new Reasons(plan.orders())));
  }

  private Reply promise(Call call) {
    PromiseWanted wanted = call.body(PromiseWanted.class);
    return Reply.json(
        Status.OK, PromiseFile.write(promised(thinking, PresentPlan.of(call), wanted)));
  }

  /** What can be promised on top of a plan, every offer held against the rules. */
  static Promise promised(Thinking thinking, PresentPlan present, PromiseWanted wanted) {
    PromiseRequest request =
        new PromiseRequest(
            wanted.piece(),
            wanted.quantity(),
            wanted.latest(),
            wanted.order(),
            wanted.buyer().orElse(""),
            wanted.schedules(),
            wanted.seed().orElse(0));
    Promise promise = thinking.of(() -> Promising.of(present.book(), present.plan(), request));
    offers(promise).forEach(offer -> Laying.audited(offer.book(), offer.plan()));
    return promise;
  }

  private static Stream<Offer> offers(Promise promise) {
    return Stream.of(
            promise.kept(),
            promise.still(),
            promise.pressed(),
            promise.latest().flatMap(Latest::offer))
        .flatMap(Optional::stream);
  }

  private Reply whatIf(Call call) {
    ChangesWanted wanted = call.body(ChangesWanted.class);
    strickle.plan.whatif.Answer answer = tried(thinking, PresentPlan.of(call), wanted);
    return Reply.json(
        Status.OK,
        WhatIfFile.write(wanted.changes().isEmpty() ? answer.withoutNeedless() : answer));
  }

  /** What changes would bring to a plan, every plan with one held against the rules. */
  static strickle.plan.whatif.Answer tried(
      Thinking thinking, PresentPlan present, ChangesWanted wanted) {
    List<Change> changes =
        wanted.changes().isEmpty()
            ? Ideas.of(present.book(), present.plan())
            : changes(wanted.changes());
    Effort effort = wanted.effort();
    long seed = wanted.seed().orElse(0);
    WhatIf asked =
        WhatIf.of(present.book(), present.plan(), changes, Optional.of(effort), seed, done -> {});
    strickle.plan.whatif.Answer answer = thinking.of(asked::run);
    answer.tried().forEach(tried -> Laying.audited(tried.book(), tried.plan()));
    Laying.audited(present.book(), answer.alone());
    return answer;
  }

  private static List<Change> changes(List<String> texts) {
    List<Change> changes = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      try {
        changes.add(ChangeText.read(texts.get(i)));
      } catch (Faulty faulty) {
        String path = "$.changes[" + i + "]";
        faulty.faults().forEach(fault -> faults.add(fault.under(path)));
      }
    }
    PlanRoutes.must(faults);
    if (changes.size() > 1) {
      changes.add(new Together(changes));
    }
    return changes;
  }

  private Reply bound(Call call) {
    Optional<LocalDateTime> from = BookBound.begin(call);
    if (from.isPresent()) {
      return Reply.json(Status.OK, BookBound.of(thinking, call, from.get()));
    }
    PresentPlan present = PresentPlan.of(call);
    return Reply.json(Status.OK, thinking.of(() -> bound(present)));
  }

  private static String bound(PresentPlan present) {
    Book book = present.book();
    Plan plan = present.plan();
    OptionalDouble cover = plan.coverPercent();
    Bounds bounds = Bounding.of(book, plan);
    PlanRequest request =
        new PlanRequest(plan.from(), Effort.ofSchedules(ALONE_SCHEDULES), 0)
            .covering(cover)
            .goingOn(plan);
    List<OffsetDateTime> alone =
        book.orders().stream().map(order -> Bounding.alone(book, request, order.id())).toList();
    return BoundFile.write(bounds, alone, Optional.of(plan));
  }
}
