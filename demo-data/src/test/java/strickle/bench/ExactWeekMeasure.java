package strickle.bench;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.logging.LogManager;
import strickle.plan.Effort;

/** Measures the planner against the best plans there are, on small generated weeks. */
final class ExactWeekMeasure {

  private ExactWeekMeasure() {}

  /**
   * Prints a line for each week and one for all those proved.
   *
   * @param words how many weeks, the first seed, the schedules the planner may lay out or, with an
   *     s behind, the seconds it may take, the seconds the model may take for each of late hours,
   *     attended minutes and flow, and at last {@code crowded} for weeks that are
   */
  public static void main(String[] words) {
    LogManager.getLogManager().reset();
    boolean crowded = words.length > 4 && words[4].equals("crowded");
    Duration limit = Duration.ofSeconds(Long.parseLong(words[3]));
    List<ExactWeekCase> proved =
        ExactWeekCase.proved(
            Integer.parseInt(words[0]),
            Integer.parseInt(words[1]),
            crowded,
            effort(words[2]),
            limit,
            one -> System.out.println(one + (one.best().attendedIsProved() ? "" : " left out")));
    System.out.println(sum(proved));
  }

  private static Effort effort(String word) {
    return word.endsWith("s")
        ? Effort.ofTime(Duration.ofSeconds(Long.parseLong(word.substring(0, word.length() - 1))))
        : Effort.ofSchedules(Long.parseLong(word));
  }

  private static String sum(List<ExactWeekCase> cases) {
    return String.format(
        Locale.ROOT,
        "weeks=%d leastLate=%d attendedGap=%.3f%% flowGap=%.3f%%",
        cases.size(),
        cases.stream().filter(ExactWeekCase::isLeastLate).count(),
        cases.stream().mapToDouble(ExactWeekCase::attendedGapPercent).average().orElse(0),
        cases.stream().mapToDouble(ExactWeekCase::flowGapPercent).average().orElse(0));
  }
}
