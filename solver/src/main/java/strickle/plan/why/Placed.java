package strickle.plan.why;

/**
 * A task where it is done.
 *
 * @param person id of who does it
 * @param start first minute
 * @param end the minute it is over; breaks at closing lie in between
 * @param minutes minutes worked
 */
record Placed(String person, int start, int end, int minutes) {

  /** Minutes between start and end in which nobody works on it. */
  int broken() {
    return end - start - minutes;
  }

  boolean meets(int from, int to) {
    return start < to && from < end;
  }
}
