package strickle.cli;

import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.plan.Effort;

/** The options that say how long to look for a better plan. */
final class EffortOptions {

  private static final long USUAL_SECONDS = 10;
  private static final long MOST_SECONDS = 3600;
  private static final long MOST_SCHEDULES = 1_000_000_000;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "how long to look for a better plan, 1 to 3600; 10 when left out")
  private String seconds;

  @Option(
      names = "--schedules",
      paramLabel = "N",
      description = {
        "look at so many schedules instead, 1 to 1000000000:"
            + " the same book, start, seed and number give the same plan every time"
      })
  private String schedules;

  /** Reads the options. */
  Effort read(Given values) {
    Optional<Long> time = values.whole("--seconds", seconds, 1, MOST_SECONDS);
    Optional<Long> number = values.whole("--schedules", schedules, 1, MOST_SCHEDULES);
    values.must(
        seconds == null || schedules == null,
        "--schedules",
        schedules,
        "either --schedules or --seconds, not both");
    return number
        .map(Effort::ofSchedules)
        .orElseGet(() -> Effort.ofTime(Duration.ofSeconds(time.orElse(USUAL_SECONDS))));
  }
}
