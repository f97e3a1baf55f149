package strickle.plan.why;

import java.util.List;

/** What kept a task from being done for a while. */
sealed interface Hold {

  /** Which stage of the run was held, the pour being 0. */
  int stage();

  /** The first minute it was held. */
  int from();

  /** The minute it was held no longer. */
  int until();

  default int minutes() {
    return until() - from();
  }

  /**
   * Forms or places that others had.
   *
   * @param things what was missing
   * @param units how much of each it needs
   * @param missing how much of each was missing
   * @param holders the runs that had it last
   */
  record Taken(
      int stage,
      int from,
      int until,
      List<Thing> things,
      List<Integer> units,
      List<Integer> missing,
      List<Course> holders)
      implements Hold {}

  /**
   * Everybody who may do it and was open was busy.
   *
   * @param errands for each of them what kept them last
   */
  record Busy(int stage, int from, int until, List<Errand> errands) implements Hold {}

  /** Nobody who may do it was open. */
  record Closed(int stage, int from, int until) implements Hold {}

  /** Somebody was open, but not for long enough before closing. */
  record TooShort(int stage, int from, int until) implements Hold {}

  /** Somebody broke the task off at closing. */
  record BrokenOff(int stage, int from, int until, String person) implements Hold {}

  /**
   * Begun earlier, a later stage could not have been in time.
   *
   * @param later which one
   * @param nested what keeps that one, if it could be found
   */
  record MostWait(int stage, int from, int until, int later, List<Hold> nested) implements Hold {}

  /** Begun earlier, something would not have been free for long enough: others need it soon. */
  record WantedSoon(int stage, int from, int until, Thing thing, int missing, List<Course> by)
      implements Hold {}

  /** Begun earlier, what comes later would find no place, for more than one reason. */
  record NoPlaceAfter(int stage, int from, int until) implements Hold {}

  /** It was poured together with other runs. */
  record Together(int stage, int from, int until, List<Course> others) implements Hold {}

  /** A pin says when it is poured. */
  record Settled(int stage, int from, int until) implements Hold {}

  /** Nothing: it could have been begun. */
  record Nothing(int stage, int from, int until) implements Hold {}
}
