package strickle.store;

import java.util.List;
import java.util.function.Consumer;
import strickle.plan.Plan;
import strickle.plan.Progress;
import strickle.plan.replan.Thawed;

/** Lays plans out; the queue knows when, but not how. */
@FunctionalInterface
public interface PlanWork {

  /**
   * Makes ready to lay a plan out.
   *
   * @param listener told of every better plan as it is found
   * @throws strickle.book.Faulty with everything that makes it impossible
   */
  Running begin(PlanJob job, Consumer<Progress> listener);

  /** A plan that is being laid out. */
  interface Running {

    /**
     * Lays it out.
     *
     * @throws strickle.book.Faulty when that turns out to be impossible
     */
    Outcome run();

    /** Ends the search soon, from another thread; the best so far is kept. */
    void stop();
  }

  /**
   * What has come of it.
   *
   * @param plan a plan the audit finds nothing in
   * @param thawed tasks that should have kept person and time and could not
   */
  record Outcome(Plan plan, List<Thawed> thawed) {

    /** Takes its own copy of the list. */
    public Outcome {
      thawed = List.copyOf(thawed);
    }
  }
}
