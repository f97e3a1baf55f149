package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.json.PlanFile;
import strickle.json.StudioFile;
import strickle.json.contract.Parameter;
import strickle.plan.Plan;
import strickle.plan.PlanFit;
import strickle.store.Entry;
import strickle.store.Kept;
import strickle.store.StudioStore;

/**
 * A plan that is asked about, and the book it is of: the plan in use with the book as it is now, or
 * one that was asked for with the book as it was then.
 *
 * @param book the book
 * @param plan a plan of this book
 */
record PresentPlan(Book book, Plan plan) {

  /** The collection of the plan in use, and the id of the only thing in it. */
  static final String COLLECTION = StudioFile.PLAN_IN_USE;

  static final String ID = StudioFile.CURRENT;

  /** The word for the plan in use. */
  static final String IN_USE = "in-use";

  /** The word a request names a plan by. */
  static final String NAME = "plan";

  static final Parameter PARAMETER =
      Parameter.query(
          NAME,
          Parameter.Kind.TEXT,
          "Which plan: the id of one that is done, with the book as it was when it was asked for;"
              + " or \""
              + IN_USE
              + "\", the plan in use with the book as it is now, which also holds without it.",
          IN_USE);

  static final Parameter OPTIONAL =
      Parameter.query(
          NAME,
          Parameter.Kind.TEXT,
          "A plan to go by: the id of one that is done, with the book as it was when it was asked"
              + " for; or \""
              + IN_USE
              + "\", the plan in use with the book as it is now. Without it the book alone.",
          IN_USE);

  /**
   * The plan that is asked about, also one of which a part has been carried out.
   *
   * @throws Refusal when there is none, or it is none of the book any more
   */
  static PresentPlan of(Call call) {
    return found(call, call.query(NAME).orElse(IN_USE), InUse::faults);
  }

  /**
   * The plan in use with the book as it is now, if all that is noted to have happened is in it.
   *
   * @throws Refusal when there is none, it is none of the book any more, or something has happened
   *     since
   */
  static PresentPlan inUseUpToDate(Call call) {
    PresentPlan present = found(call, IN_USE, InUse::faults);
    if (!call.studio().now().entries().list(Collection.PROGRESS.name()).isEmpty()) {
      String detail =
          "Something is noted to have happened that the plan in use does not know of. Lay the rest"
              + " out anew, accept that plan, and ask again.";
      throw new Refusal(Problem.of(Status.CONFLICT, "Something has happened", detail));
    }
    return present;
  }

  /** The plan that is asked about, if one is. */
  static Optional<PresentPlan> ifAsked(Call call) {
    return call.query(NAME).map(name -> found(call, name, InUse::faults));
  }

  /** The same, also of one that is under way. */
  static Optional<PresentPlan> underWayIfAsked(Call call) {
    return call.query(NAME).map(name -> found(call, name, InUse::faultsUnderWay));
  }

  /** The plan of this name, also of one that is under way. */
  static PresentPlan underWay(Call call, String name) {
    return found(call, name, InUse::faultsUnderWay);
  }

  /**
   * The plan in use of a studio, with its book as it is now; it may be under way.
   *
   * @throws Refusal when there is none, or it is none of the book any more
   */
  static PresentPlan inUseOf(StudioStore studio) {
    return fitting(studio.now(), InUse::faultsUnderWay);
  }

  /** The plan of this name, whatever has become of its book. */
  static Plan any(Call call, String name) {
    return name.equals(IN_USE) ? any(call.studio().now()) : made(call, name);
  }

  /** Whether a plan is in use, without reading it. */
  static boolean isAnyIn(Kept now) {
    return now.entries().find(COLLECTION, ID).isPresent();
  }

  /** The plan in use, whatever has become of its book. */
  static Plan any(Kept now) {
    return InUse.of(now).plan();
  }

  private static PresentPlan found(Call call, String name, Function<InUse, List<Fault>> faults) {
    if (!name.equals(IN_USE)) {
      Plan plan = made(call, name);
      return new PresentPlan(call.studio().plans().book(name).orElseThrow(), plan);
    }
    return fitting(call.studio().now(), faults);
  }

  private static PresentPlan fitting(Kept now, Function<InUse, List<Fault>> faults) {
    InUse inUse = InUse.of(now);
    List<Fault> found = faults.apply(inUse);
    if (!found.isEmpty()) {
      throw new Refusal(Problem.of(Status.CONFLICT, "The book has changed", found));
    }
    return new PresentPlan(now.book(), inUse.plan());
  }

  /**
   * The plan in use and whether it is one of the book. To find out takes longer than most answers,
   * and it stays so until something changes.
   */
  private record InUse(Plan plan, List<Fault> faults, List<Fault> faultsUnderWay) {

    static InUse of(Kept now) {
      return now.workedOut(InUse.class, InUse::found);
    }

    private static InUse found(Kept now) {
      Plan plan =
          now.entries()
              .find(COLLECTION, ID)
              .map(Entry::body)
              .map(PlanFile::parse)
              .orElseThrow(() -> Refusal.notThere("plan in use: accept one that is done"));
      Book book = now.book();
      return new InUse(plan, PlanFit.faults(book, plan), PlanFit.faultsUnderWay(book, plan));
    }
  }

  private static Plan made(Call call, String id) {
    if (call.studio().plans().find(id).isEmpty()) {
      throw Refusal.notThere("plan " + id);
    }
    return call.studio()
        .plans()
        .result(id)
        .orElseThrow(
            () ->
                new Refusal(
                    Problem.of(
                        Status.CONFLICT,
                        "No plan yet",
                        "Nothing has come of plan " + id + " yet, or it failed.")));
  }
}
