package strickle.shop;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How long to search. With a number of schedules the outcome is the same every time; with a time it
 * depends on the machine.
 *
 * @param schedules the most schedules to generate, 1 or more
 * @param time the longest to search
 */
public record Budget(OptionalLong schedules, Optional<Duration> time) {

  /** Refuses a budget without any end. */
  public Budget {
    if (schedules.isEmpty() && time.isEmpty()) {
      throw new IllegalArgumentException("a number of schedules or a time");
    }
    if (schedules.orElse(1) < 1) {
      throw new IllegalArgumentException("1 schedule or more, not " + schedules.getAsLong());
    }
  }

  /** So many schedules, however long it takes. */
  public static Budget ofSchedules(long schedules) {
    return new Budget(OptionalLong.of(schedules), Optional.empty());
  }

  /** So long, however many schedules that makes. */
  public static Budget ofTime(Duration time) {
    return new Budget(OptionalLong.empty(), Optional.of(time));
  }
}
