package strickle.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.logging.LogManager;

/** Measures the planner against the best plans there are, on small generated weeks. */
final class ExactWeekMeasure {

  private ExactWeekMeasure() {}

  /**
   * Prints a line for each week and one for all.
   *
   * @param words first seed, last seed, schedules the planner may lay out, seconds the model may
   *     take for each of late hours, attended minutes and flow, and at last {@code crowded} for
   *     weeks that are
   */
  public static void main(String[] words) {
    LogManager.getLogManager().reset();
    boolean crowded = words.length > 4 && words[4].equals("crowded");
    Duration limit = Duration.ofSeconds(Long.parseLong(words[3]));
    List<ExactWeekCase> cases = new ArrayList<>();
    for (ExactWeekSample week :
        ExactWeekSample.of(Integer.parseInt(words[0]), Integer.parseInt(words[1]), crowded)) {
      cases.add(ExactWeekCase.of(week, Long.parseLong(words[2]), limit));
      System.out.println(cases.getLast());
    }
    System.out.println(sum(cases));
  }

  private static String sum(List<ExactWeekCase> cases) {
    return String.format(
        Locale.ROOT,
        "weeks=%d proved=%d leastLate=%d attendedGap=%.3f%% flowGap=%.3f%%",
        cases.size(),
        cases.stream().filter(one -> one.best().attendedIsProved()).count(),
        cases.stream().filter(ExactWeekCase::isLeastLate).count(),
        cases.stream().mapToDouble(ExactWeekCase::attendedGapPercent).average().orElse(0),
        cases.stream().mapToDouble(ExactWeekCase::flowGapPercent).average().orElse(0));
  }
}
