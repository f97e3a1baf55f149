package strickle.shop;

import java.util.OptionalInt;

/**
 * The wait between the end of one activity of a job and the start of the next.
 *
 * @param clock index of the clock that measures the least wait
 * @param hours the least wait, in hours of that clock, 0 or more
 * @param atMostMinutes the most that may lie between, in wall minutes; none: no limit
 */
public record Wait(int clock, double hours, OptionalInt atMostMinutes) {

  /** No wait at all, and no limit. */
  public static final Wait NONE = new Wait(0, 0, OptionalInt.empty());

  /** Refuses negative waits. */
  public Wait {
    if (clock < 0 || !(hours >= 0) || atMostMinutes.orElse(0) < 0) {
      throw new IllegalArgumentException(
          "waits of 0 or more, not " + hours + " h, at most " + atMostMinutes);
    }
  }
}
