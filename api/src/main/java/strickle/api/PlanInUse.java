package strickle.api;

import java.util.List;
import strickle.json.ItemFile;
import strickle.json.Message;
import strickle.json.PlanFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.plan.Plan;
import strickle.plan.replan.Comparison;
import strickle.plan.replan.Happening;
import strickle.plan.replan.Move;
import strickle.plan.replan.OrderShift;
import strickle.store.Entries;
import strickle.store.Entry;
import strickle.store.Kept;
import strickle.store.KeptPlan;
import strickle.store.PlanAsked;

/** The plan a studio works by, how another came to be it, and what moves between two plans. */
final class PlanInUse {

  /**
   * What moves from one plan to another.
   *
   * @param before the plan before: an id, or "in-use"
   * @param after the plan after
   * @param moved how many tasks still to come have another time or person, are new or gone
   * @param movedMinutes by how many minutes they move together
   * @param moves each of them, and what has happened meanwhile, by time
   * @param orders the orders that get later or earlier
   */
  public record PlanComparison(
      String before,
      String after,
      long moved,
      long movedMinutes,
      List<Move> moves,
      List<OrderShift> orders) {}

  private PlanInUse() {}

  /** The routes. */
  static List<Route> routes() {
    return List.of(
        new Route(
            Operation.of(
                    "GET",
                    "/api/plan-in-use",
                    "readPlanInUse",
                    PlanRoutes.TOPIC,
                    "The plan the studio works by.",
                    "As strickle-plan/1. The book may have changed since it was made.")
                .answering(Answer.of(Status.OK, "The plan.", PlanFile.SHAPE, "ETag")),
            PlanInUse::read),
        new Route(
            PlanRoutes.one(
                    "POST",
                    "/api/plans/{id}/accept",
                    "acceptPlan",
                    "Work by this plan.",
                    "A change like any other: it can be undone. What a plan laid out anew knows to"
                        + " have happened is taken off /api/progress with it.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .answering(
                    Answer.of(
                        Status.OK,
                        "It is the plan in use.",
                        Shape.of(JournalRoutes.RevisionNow.class),
                        "ETag")),
            PlanInUse::accept),
        new Route(
            PlanRoutes.one(
                    "GET",
                    "/api/plans/{id}/compare/{other}",
                    "comparePlans",
                    "What moves from one plan to another.",
                    "Task by task and order by order; either may be \"in-use\".")
                .with(Parameter.path("other", "The plan after.", "in-use"))
                .answering(Answer.of(Status.OK, "What moves.", Shape.of(PlanComparison.class))),
            PlanInUse::compare));
  }

  private static Reply read(Call call) {
    Written written = call.studio().now().workedOut(Written.class, Written::of);
    return Matching.reading(call, written.tag(), () -> Reply.json(Status.OK, written.json()));
  }

  /** The plan in use as it is told, and the tag of that. */
  private record Written(String json, String tag) {

    static Written of(Kept now) {
      String json = PlanFile.write(PresentPlan.any(now));
      return new Written(json, Etag.of(json));
    }
  }

  private static Reply accept(Call call) {
    String id = call.path("id");
    Plan plan = PresentPlan.any(call, id);
    String body = ItemFile.compact(PlanFile.write(plan));
    List<Happening> known =
        call.studio()
            .plans()
            .find(id)
            .map(KeptPlan::asked)
            .flatMap(PlanAsked::rest)
            .map(PlanAsked.Rest::happened)
            .orElse(List.of());
    Kept kept =
        call.studio()
            .change(
                call.by("a plan accepted"),
                now -> {
                  Matching.check(call, call.tag(now), () -> BookRoutes.since(call));
                  return without(now.entries(), known)
                      .with(PresentPlan.COLLECTION, PresentPlan.ID, body);
                });
    return JournalRoutes.revision(call, kept);
  }

  private static Entries without(Entries entries, List<Happening> known) {
    String progress = Collection.PROGRESS.name();
    Entries left = entries;
    for (Entry entry : entries.list(progress)) {
      if (known.contains(Message.parse(entry.body(), Happening.class))) {
        left = left.without(progress, entry.id());
      }
    }
    return left;
  }

  private static Reply compare(Call call) {
    String before = call.path("id");
    String after = call.path("other");
    Plan one = PresentPlan.any(call, before);
    Plan other = PresentPlan.any(call, after);
    List<Move> moves =
        Comparison.moves(one, other).stream()
            .filter(move -> move.change() != Move.Change.UNCHANGED)
            .toList();
    long moved = moves.stream().filter(move -> move.change().isMove()).count();
    return Reply.json(
        Status.OK,
        Message.write(
            new PlanComparison(
                before,
                after,
                moved,
                Comparison.movedMinutes(moves),
                moves,
                Comparison.orders(one, other))));
  }
}
