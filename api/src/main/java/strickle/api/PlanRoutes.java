package strickle.api;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.Message;
import strickle.json.PlanFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.plan.Cover;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.plan.Replanning;
import strickle.plan.UsualStart;
import strickle.store.Kept;
import strickle.store.KeptPlan;
import strickle.store.Once;
import strickle.store.PlanAsked;
import strickle.store.PlanQueue;
import strickle.store.Plans;

/** Asking for plans, and what becomes of them. */
final class PlanRoutes {

  static final String TOPIC = "Plans";

  private static final String ROOT = "/api/plans";
  private static final String ONE = ROOT + "/{id}";
  private static final int USUAL_PAGE = 20;
  private static final int LONGEST_PAGE = 200;
  private static final Shape STATE = Shape.of(KeptPlan.class);

  /**
   * Plans, without their tasks.
   *
   * @param items newest first
   * @param next what to give as "after" for older ones; nothing when there are none
   * @param inUse the id of the one the studio works by, on whatever page it stands; nothing when no
   *     plan is in use, or it is not among the plans any more
   * @param anyInUse whether the studio works by a plan at all, be it among these or not
   */
  public record PlanList(
      List<KeptPlan> items, Optional<String> next, Optional<String> inUse, boolean anyInUse) {}

  private final PlanQueue queue;
  private final PlanEvents events;
  private final Clock clock;

  private PlanRoutes(PlanQueue queue, Clock clock) {
    this.queue = queue;
    this.events = new PlanEvents(queue);
    this.clock = clock;
  }

  /** The routes. */
  static List<Route> of(PlanQueue queue, Clock clock) {
    PlanRoutes routes = new PlanRoutes(queue, clock);
    return List.of(
        new Route(starting(), routes::start),
        new Route(startingAnew(), routes::startAnew),
        new Route(listing(), PlanRoutes::list),
        new Route(
            one("GET", ONE, "readPlan", "How far a plan is.", "Its state, figures and totals.")
                .answering(Answer.of(Status.OK, "It is there.", STATE)),
            call -> state(call, Status.OK, call.studio().plans().find(call.path("id")))),
        new Route(
            one("GET", ONE + "/result", "readPlanResult", "The plan.", "As strickle-plan/1.")
                .answering(Answer.of(Status.OK, "The plan.", PlanFile.SHAPE, "ETag")),
            PlanRoutes::result),
        new Route(
            one(
                    "POST",
                    ONE + "/stop",
                    "stopPlan",
                    "Stop looking.",
                    "One that is being laid out ends soon and keeps its best; one that waits is"
                        + " over at once.")
                .answering(Answer.of(Status.ACCEPTED, "It will end.", STATE)),
            call -> state(call, Status.ACCEPTED, call.studio().plans().stop(call.path("id")))),
        new Route(
            one(
                    "DELETE",
                    ONE,
                    "removePlan",
                    "No such plan any more.",
                    "For good, with the book it is of. Refused (409) while it is being laid out and"
                        + " while the studio works by it. One that was in use before stays whole in"
                        + " the journal, so undo and redo go on as if it were there.")
                .answering(Answer.empty(Status.DONE, "It is gone.")),
            PlanRoutes::remove),
        new Route(
            one(
                    "GET",
                    ONE + "/events",
                    "listenToPlan",
                    "What becomes of it, as it happens.",
                    "Server-sent events: \"progress\" whenever something has changed, with the"
                        + " plan's state as data (seconds elapsed, schedules, late hours), and"
                        + " \"done\" once it is over, which ends the stream. A comment every ten"
                        + " seconds keeps it open.")
                .answering(
                    Answer.of(Status.OK, "The events.", new Shape.Text(PlanEvents.MEDIA_TYPE))),
            call -> routes.events.of(call.studio(), call.path("id"))));
  }

  private static Operation starting() {
    return Operation.of(
            "POST",
            ROOT,
            "createPlan",
            TOPIC,
            "Ask for a plan.",
            "Of the book as it is now, whatever becomes of it meanwhile. Plans are laid out one"
                + " after the other; at most "
                + Plans.MOST_WAITING
                + " may wait (429).")
        .with(Idempotency.PARAMETER)
        .with(Who.PARAMETER)
        .taking(
            Shape.of(Wanted.PlanWanted.class),
            "{\"from\": \"2027-04-05T00:00\", \"schedules\": 2000, \"seed\": 1}")
        .answering(Answer.of(Status.ACCEPTED, "It is asked for.", STATE, "Location"));
  }

  private static Operation startingAnew() {
    return Operation.of(
            "POST",
            "/api/replan",
            "createReplan",
            TOPIC,
            "Ask for a plan under way to be laid out anew.",
            "With what has happened (/api/progress) as it happened, what is about to as planned,"
                + " and as little moved of the rest as can be.")
        .with(Idempotency.PARAMETER)
        .with(Who.PARAMETER)
        .taking(
            Shape.of(Wanted.ReplanWanted.class),
            "{\"now\": \"2027-04-07T10:00\", \"frozenHours\": 24, \"schedules\": 2000}")
        .answering(Answer.of(Status.ACCEPTED, "It is asked for.", STATE, "Location"));
  }

  private static Operation listing() {
    return Operation.of("GET", ROOT, "listPlans", TOPIC, "The plans.", "Newest first.")
        .with(
            Parameter.query(
                "limit",
                Parameter.Kind.WHOLE,
                "How many on a page, 1 to " + LONGEST_PAGE + "; " + USUAL_PAGE + " without it.",
                "20"))
        .with(Parameter.query("after", Parameter.Kind.TEXT, "The \"next\" of the page before.", ""))
        .answering(Answer.of(Status.OK, "One page.", Shape.of(PlanList.class)));
  }

  /** An operation on one plan. */
  static Operation one(String method, String path, String id, String summary, String text) {
    return Operation.of(method, path, id, TOPIC, summary, text)
        .with(Parameter.path("id", "Which plan.", "3f0c7a52-0d7a-4a34-9a55-1f6d3f1f0b11"));
  }

  private Reply start(Call call) {
    String body = call.body();
    Wanted.PlanWanted wanted = Message.parse(body, Wanted.PlanWanted.class);
    Kept now = call.studio().now();
    Book book = now.book();
    OffsetDateTime from =
        wanted.from().map(at -> in(book, at)).orElseGet(() -> UsualStart.of(book, clock));
    PlanAsked asked =
        new PlanAsked(
            from,
            wanted.effortSeconds(),
            wanted.schedules(),
            wanted.seed().orElse(0),
            wanted.coverPercent(),
            wanted.orderingFrom().map(at -> in(book, at)),
            Optional.empty());
    Laying.request(asked);
    must(Planning.faults(book, from, Cover.of(asked.coverPercent())));
    return asked(call, Idempotency.of(call, ROOT, body), asked, now, Optional.empty());
  }

  private Reply startAnew(Call call) {
    String body = call.body();
    Wanted.ReplanWanted wanted = Message.parse(body, Wanted.ReplanWanted.class);
    Kept now = call.studio().now();
    Plan present = PresentPlan.underWay(call, wanted.plan().orElse(PresentPlan.IN_USE)).plan();
    PlanAsked asked = asked(call, wanted, now);
    Replanning.of(now.book(), present, Laying.replanRequest(asked));
    return asked(call, Idempotency.of(call, "replan", body), asked, now, Optional.of(present));
  }

  private PlanAsked asked(Call call, Wanted.ReplanWanted wanted, Kept now) {
    Book book = now.book();
    ZoneId zone = book.studio().timeZone();
    OffsetDateTime moment =
        wanted
            .now()
            .map(at -> in(book, at))
            .orElseGet(
                () ->
                    clock
                        .instant()
                        .truncatedTo(ChronoUnit.MINUTES)
                        .atZone(zone)
                        .toOffsetDateTime());
    LocalDateTime midnight =
        moment.atZoneSameInstant(zone).toLocalDate().plusDays(1).atStartOfDay();
    OffsetDateTime until =
        wanted.frozenHours().isPresent()
            ? moment.plusHours(wanted.frozenHours().getAsLong())
            : in(book, wanted.frozenUntil().orElse(midnight));
    return new PlanAsked(
        moment,
        wanted.effortSeconds(),
        wanted.schedules(),
        wanted.seed().orElse(0),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.of(new PlanAsked.Rest(until, BenchRoutes.noted(call), wanted.plan())));
  }

  private Reply asked(
      Call call, Optional<Once> once, PlanAsked asked, Kept now, Optional<Plan> present) {
    Plans plans = call.studio().plans();
    String id = plans.ask(call.who(), once, asked, now, present);
    queue.add(call.studio().studio().id(), id);
    return plans
        .find(id)
        .map(plan -> Reply.json(Status.ACCEPTED, Message.write(plan)))
        .orElseThrow(() -> Refusal.notThere("plan " + id + " any more"))
        .with("Location", Addresses.below(ROOT, id));
  }

  /** The moment of a local time in a studio; one that a clock change skips is so much later. */
  static OffsetDateTime in(Book book, LocalDateTime at) {
    return at.atZone(book.studio().timeZone()).toOffsetDateTime();
  }

  /** Refuses what has faults. */
  static void must(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private static Reply list(Call call) {
    int limit = call.whole("limit", USUAL_PAGE, 1, LONGEST_PAGE);
    Plans plans = call.studio().plans();
    Optional<String> after = call.query("after");
    after
        .filter(id -> plans.find(id).isEmpty())
        .ifPresent(
            id -> {
              throw Refusal.malformed("after", '"' + id + '"', "the \"next\" of the page before");
            });
    List<KeptPlan> found = plans.list(after, limit + 1);
    List<KeptPlan> page = found.subList(0, Math.min(limit, found.size()));
    Optional<String> next =
        found.size() > limit ? Optional.of(page.get(limit - 1).id()) : Optional.empty();
    Kept now = call.studio().now();
    return Reply.json(
        Status.OK,
        Message.write(new PlanList(page, next, plans.inUse(now), PresentPlan.isAnyIn(now))));
  }

  private static Reply state(Call call, int status, Optional<KeptPlan> plan) {
    return plan.map(found -> Reply.json(status, Message.write(found)))
        .orElseThrow(() -> Refusal.notThere("plan " + call.path("id")));
  }

  private static Reply result(Call call) {
    String json = PlanFile.write(PresentPlan.any(call, call.path("id")));
    return Matching.reading(call, Etag.of(json), () -> Reply.json(Status.OK, json));
  }

  private static Reply remove(Call call) {
    String id = call.path("id");
    return switch (call.studio().plans().remove(id, call.studio().now())) {
      case DONE -> Reply.empty(Status.DONE);
      case NOT_THERE -> throw Refusal.notThere("plan " + id);
      case RUNNING ->
          throw stays("Under way", id, "is being laid out. Stop it first; once it is over, remove");
      case IN_USE ->
          throw stays("In use", id, "is the plan in use. Work by another first, then remove");
    };
  }

  private static Refusal stays(String title, String id, String why) {
    return new Refusal(Problem.of(Status.CONFLICT, title, "Plan " + id + " " + why + " it."));
  }
}
