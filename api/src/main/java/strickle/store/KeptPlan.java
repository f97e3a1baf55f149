package strickle.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import strickle.plan.Totals;
import strickle.plan.replan.Thawed;

/**
 * A plan that somebody has asked for, without its tasks.
 *
 * @param id a UUID
 * @param kind whether it was made from the start or laid out anew
 * @param state how far it is
 * @param createdAt when it was asked for
 * @param changedAt when it came into this state
 * @param who who asked
 * @param book the name of the studio in the book it is of, as it was then
 * @param asked what was asked
 * @param progress how far the search is or was; nothing before anything was found
 * @param totals of the plan; nothing until there is one
 * @param thawed tasks of a plan laid out anew that should have kept person and time and could not
 * @param why why it failed, or why there is no plan
 */
public record KeptPlan(
    String id,
    Kind kind,
    State state,
    Instant createdAt,
    Instant changedAt,
    String who,
    String book,
    PlanAsked asked,
    Optional<PlanProgress> progress,
    Optional<Totals> totals,
    List<Thawed> thawed,
    Optional<String> why) {

  /** What kind of plan it is. */
  public enum Kind {
    /** Made from the start. */
    PLAN,
    /** A plan under way, laid out anew. */
    REPLAN
  }

  /** How far a plan is. */
  public enum State {
    /** Nobody is at it yet. */
    WAITING,
    /** It is being laid out. */
    RUNNING,
    /** It is there. */
    DONE,
    /** Somebody has stopped it; the best so far is there, unless it had not begun. */
    STOPPED,
    /** There is none, and it says why. */
    FAILED
  }

  /** Whether nothing will become of it any more that has not. */
  public boolean isOver() {
    return state != State.WAITING && state != State.RUNNING;
  }

  /** Takes its own copy of the list. */
  public KeptPlan {
    thawed = List.copyOf(thawed);
  }
}
