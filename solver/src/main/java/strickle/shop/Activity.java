package strickle.shop;

import java.util.List;

/**
 * One attended (or machine) activity in the chain of a kind of job.
 *
 * @param name what a person calls it
 * @param fixedMinutes minutes once for the whole run, 0 or more
 * @param eachMinutes minutes for each job of the run, 0 or more
 * @param workers indices of those who may do it, one of whom is busy with it; empty: needs nobody
 * @param pauses whether it may pause while its worker is closed
 * @param before the wait since the activity before it; of the first, it must be {@link Wait#NONE}
 * @param holds resources held from its start
 * @param notBefore the first minute it may start, 0 or more, unless it is settled
 */
public record Activity(
    String name,
    int fixedMinutes,
    int eachMinutes,
    List<Integer> workers,
    boolean pauses,
    Wait before,
    List<Hold> holds,
    int notBefore) {

  /** Refuses negative minutes and copies the lists. */
  public Activity {
    if (fixedMinutes < 0 || eachMinutes < 0) {
      throw new IllegalArgumentException(
          name + ": minutes of 0 or more, not " + fixedMinutes + " and " + eachMinutes);
    }
    workers = List.copyOf(workers);
    holds = List.copyOf(holds);
  }

  /** An activity that may start at any time. */
  public Activity(
      String name,
      int fixedMinutes,
      int eachMinutes,
      List<Integer> workers,
      boolean pauses,
      Wait before,
      List<Hold> holds) {
    this(name, fixedMinutes, eachMinutes, workers, pauses, before, holds, 0);
  }

  /** The same activity, to start at a minute or later. */
  public Activity from(int minute) {
    return new Activity(
        name, fixedMinutes, eachMinutes, workers, pauses, before, holds, Math.max(0, minute));
  }
}
