package strickle.plan;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of the planner.
 *
 * @param from the first moment that may be planned
 * @param effort how long to search
 * @param seed where the search's chance begins: the same seed, book, start and number of schedules
 *     give the same plan
 * @param coverPercent in how many of a hundred cases the castings of a piece have to bring what is
 *     asked for, 50 to 99.9; empty for as many castings as do on average
 * @param present a plan to begin the search from, made for this book or one much like it
 * @param ordering from when on materials can be ordered: what uses one that is short in stock
 *     starts no earlier than it can be there; empty when materials are not waited for
 */
public record PlanRequest(
    OffsetDateTime from,
    Effort effort,
    long seed,
    OptionalDouble coverPercent,
    Optional<Plan> present,
    Optional<OffsetDateTime> ordering) {

  /**
   * Refuses a request without a start or an effort.
   *
   * @throws strickle.book.Faulty when one is missing, the year is not from 1970 to 2999 or the
   *     cover not from 50 to 99.9
   */
  public PlanRequest {
    Flaws flaws = new Flaws().time(".from", from);
    flaws.given(".effort", effort, "how long to search");
    flaws.given(".present", present, "a plan or none");
    flaws.given(".ordering", ordering, "a time or none");
    Cover.check(flaws, ".coverPercent", coverPercent).raise();
  }

  /** A request for castings counted as on average that begins from no plan. */
  public PlanRequest(OffsetDateTime from, Effort effort, long seed) {
    this(from, effort, seed, OptionalDouble.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * The same request, beginning from a plan: its order is the first to be tried, in the book's own
   * forms and hours, and castings it does not have are tried in several places. The plan itself is
   * not among what is compared: who wants the better of the two compares them.
   */
  public PlanRequest startingFrom(Plan plan) {
    return new PlanRequest(from, effort, seed, coverPercent, Optional.of(plan), ordering);
  }

  /** The same request for what is still to come of a plan, if it is under way. */
  public PlanRequest goingOn(Plan plan) {
    return plan.history().isPresent() ? startingFrom(plan) : this;
  }

  /** The same request for castings that cover the orders in so many of a hundred cases. */
  public PlanRequest covering(OptionalDouble percent) {
    return new PlanRequest(from, effort, seed, percent, present, ordering);
  }

  /** The same request, waiting for materials as a plan does that it goes on from, or not at all. */
  public PlanRequest waitingAs(Plan plan) {
    return new PlanRequest(from, effort, seed, coverPercent, present, plan.orderingFrom());
  }

  /** The same request for a plan that waits for materials which can be ordered from a moment on. */
  public PlanRequest ordering(OffsetDateTime moment) {
    return new PlanRequest(from, effort, seed, coverPercent, present, Optional.of(moment));
  }
}
