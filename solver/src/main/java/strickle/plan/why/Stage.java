package strickle.plan.why;

import java.util.List;
import java.util.OptionalDouble;
import strickle.plan.PlanWait;

/**
 * A task of a run as the book asks for it, with the wait before it.
 *
 * @param name the step's own name; "pour" and "demould" for the two before the route
 * @param minutes minutes of work
 * @param by ids of the people who may do it; empty when anyone may
 * @param whole whether it must not be broken off at closing
 * @param kind what is waited for before it; a pour waits for nothing
 * @param waitHours the least wait in hours; of a set and a cure at 20 °C
 * @param atMostHours the most hours from the beginning of the wait to the start, if there is a most
 */
record Stage(
    String name,
    int minutes,
    List<String> by,
    boolean whole,
    PlanWait kind,
    double waitHours,
    OptionalDouble atMostHours) {

  private static final double TOLERANCE_HOURS = 1e-9;

  /** Whether the wait before it depends on how warm the room is. */
  boolean ages() {
    return kind == PlanWait.SET || kind == PlanWait.CURE;
  }

  /** The last minute it may start when its wait began at {@code from}. */
  int latest(int from) {
    return atMostHours.isEmpty()
        ? Integer.MAX_VALUE
        : from + (int) Math.floor((atMostHours.getAsDouble() + TOLERANCE_HOURS) * 60);
  }

  /** Least whole minutes that are at least so many hours. */
  static int minutes(double hours) {
    return (int) Math.ceil((hours - TOLERANCE_HOURS) * 60);
  }

  Stage lasting(int otherMinutes) {
    return new Stage(name, otherMinutes, by, whole, kind, waitHours, atMostHours);
  }

  Stage withoutMost() {
    return new Stage(name, minutes, by, whole, kind, waitHours, OptionalDouble.empty());
  }
}
