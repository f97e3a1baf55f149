package strickle.cli;

import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.plan.Effort;

/** The options that say how long to try all changes together. */
final class WhatIfEffort {

  private static final long MOST_SECONDS = 3600;
  private static final long MOST_SCHEDULES = 1_000_000_000;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = {
        "how long to try all of them, 1 to 3600; when left out, a number of schedules that takes"
            + " some ten to twenty seconds"
      })
  private String seconds;

  @Option(
      names = "--schedules",
      paramLabel = "N",
      description = "look at so many schedules for all of them together, 1 to 1000000000")
  private String schedules;

  /** Reads the options; empty when neither is given. */
  Optional<Effort> read(Given values) {
    Optional<Long> time = values.whole("--seconds", seconds, 1, MOST_SECONDS);
    Optional<Long> number = values.whole("--schedules", schedules, 1, MOST_SCHEDULES);
    values.must(
        seconds == null || schedules == null,
        "--schedules",
        schedules,
        "either --schedules or --seconds, not both");
    return number
        .map(Effort::ofSchedules)
        .or(() -> time.map(Duration::ofSeconds).map(Effort::ofTime));
  }
}
