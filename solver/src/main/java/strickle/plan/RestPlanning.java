package strickle.plan;

import java.util.List;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Plans a book on from a plan that is under way: what has happened in it stays as it was, nothing
 * new begins before the moment the plan was laid out anew, whoever is away has no hours and what is
 * broken is poured into no more. All that is to come goes where it is best.
 */
final class RestPlanning {

  private final RestSearch search;

  private RestPlanning(RestSearch search) {
    this.search = search;
  }

  /**
   * Makes ready to plan on.
   *
   * @param request one that begins from a plan with a history
   * @param aims what is looked at in place of the orders' dues; none: the dues
   * @throws Faulty with everything that keeps the rest from being laid out
   */
  static RestPlanning of(Book book, PlanRequest request, List<Aim> aims) {
    Standing standing = standing(book, request.present().orElseThrow());
    Owed owed = Owed.of(standing);
    RestPins pins = RestPins.of(standing);
    List<Fault> faults = RestFaults.of(standing, owed, pins);
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return new RestPlanning(
        new RestSearch(standing, owed, pins, request.effort(), request.seed(), aims));
  }

  /** How things stand by what a plan knows itself. */
  static Standing standing(Book book, Plan plan) {
    return StandingReader.of(book, plan, List.of(), plan.history().orElseThrow().now());
  }

  /** Everything that keeps the rest of a plan from being laid out for a book. */
  static List<Fault> faults(Book book, Plan plan) {
    Standing standing = standing(book, plan);
    return RestFaults.of(standing, Owed.of(standing), RestPins.of(standing));
  }

  /** Whether a request begins from a plan that is under way. */
  static boolean isAsked(PlanRequest request) {
    return request.present().flatMap(Plan::history).isPresent();
  }

  /**
   * Plans, until the effort is spent or {@link #stop} is called; nothing is said of why orders are
   * late.
   *
   * @param staying ids of lots of which what is to come stays where it is too
   */
  Plan run(Set<String> staying) {
    Reading reading = Reading.of(task -> staying.contains(task.lot()));
    return search.of(reading, 1).plan();
  }

  /** Ends the search soon; the best plan found so far is kept. */
  void stop() {
    search.stop();
  }
}
