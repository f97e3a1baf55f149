package strickle.plan;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How long to search for a better plan: a number of schedules, which gives the same plan every
 * time, or a time, which is what a person wants to wait.
 *
 * @param schedules the most schedules to lay out, 1 or more
 * @param time the longest to search, above zero
 */
public record Effort(OptionalLong schedules, Optional<Duration> time) {

  /**
   * Refuses an effort that is neither or both, or nothing at all.
   *
   * @throws strickle.book.Faulty when just one of the two is not given, or it is not above zero
   */
  public Effort {
    Flaws flaws = new Flaws();
    flaws.when(
        schedules.isPresent() == time.isPresent(),
        "",
        schedules.isPresent() ? "schedules and a time" : "neither schedules nor a time",
        "a number of schedules or a time");
    flaws.atLeast(1, ".schedules", schedules.orElse(1));
    time.ifPresent(
        limit ->
            flaws.when(limit.isNegative() || limit.isZero(), ".time", limit, "a time above zero"));
    flaws.raise();
  }

  /** So many schedules, however long they take. */
  public static Effort ofSchedules(long schedules) {
    return new Effort(OptionalLong.of(schedules), Optional.empty());
  }

  /** So long, however many schedules that makes. */
  public static Effort ofTime(Duration time) {
    return new Effort(OptionalLong.empty(), Optional.of(time));
  }
}
