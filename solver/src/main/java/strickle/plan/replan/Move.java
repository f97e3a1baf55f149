package strickle.plan.replan;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * What has become of one task.
 *
 * @param task its id
 * @param change what has become of it
 * @param before when and by whom it was planned; empty for a new task
 * @param after when and by whom it is planned now, or really was done; empty for one that is gone
 */
public record Move(String task, Change change, Optional<Slot> before, Optional<Slot> after) {

  /**
   * A place in a plan.
   *
   * @param person id of who does it
   * @param start when it begins
   * @param end when it is over
   */
  public record Slot(String person, OffsetDateTime start, OffsetDateTime end) {}

  /** What becomes of a task. */
  public enum Change {
    /** It stays where it was. */
    UNCHANGED,
    /** It is at another time. */
    MOVED,
    /** At the same time, somebody else does it. */
    OTHER_PERSON,
    /** It is at another time and somebody else does it. */
    MOVED_TO_OTHER_PERSON,
    /** The present plan does not have it. */
    NEW,
    /** The new plan does not have it. */
    GONE,
    /** It has begun or is done, as it was reported. */
    HAPPENED;

    /** Whether a task still to come is not where it was. */
    public boolean isMove() {
      return this != UNCHANGED && this != HAPPENED;
    }
  }
}
