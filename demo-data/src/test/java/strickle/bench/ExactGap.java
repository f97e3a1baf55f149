package strickle.bench;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.plan.Plan;

/** How far a plan is from the best there is, as far as the exact model proves that in time. */
final class ExactGap {

  private static final String UNPROVED = "-";
  private static final double NANOS = 1e9;
  private static final double HUNDRED = 100;

  private ExactGap() {}

  /**
   * Refuses machines that the library of the model is not here for.
   *
   * @throws Faulty when this is one
   */
  static void refuseOtherMachines() {
    String machine = System.getProperty("os.name") + " on " + System.getProperty("os.arch");
    if (!machine.equals("Linux on amd64")) {
      throw new Faulty(List.of(new Fault("--exact", machine, "Linux on amd64")));
    }
  }

  /**
   * Solves the plan's week and tells the gap in the words of the bench.
   *
   * @param limit the longest to look, for each of late hours, attended minutes and flow
   * @throws IllegalStateException when the plan is better than what is proved to be best
   */
  static String of(Book book, Plan plan, Duration limit) {
    long began = System.nanoTime();
    ExactWeek.Result best = ExactWeek.solve(book, plan.from(), plan, limit);
    double seconds = (System.nanoTime() - began) / NANOS;
    return String.format(
        Locale.ROOT,
        " lateHoursAboveExact=%s attendedAboveExact=%s exactSeconds=%.1f",
        late(plan, best),
        attended(plan, best),
        seconds);
  }

  private static String late(Plan plan, ExactWeek.Result best) {
    BigDecimal above = plan.totals().weightedLateHours().subtract(best.lateHoursAtLeast());
    if (above.signum() < 0) {
      throw new IllegalStateException("less late than is proved to be possible: " + best);
    }
    return best.lateIsProved() ? above.stripTrailingZeros().toPlainString() : UNPROVED;
  }

  /** In percent; no two plans of different lateness can be compared in their minutes. */
  private static String attended(Plan plan, ExactWeek.Result best) {
    boolean isLeastLate = late(plan, best).equals("0");
    if (!isLeastLate || !best.attendedIsProved()) {
      return UNPROVED;
    }
    long above = plan.totals().attendedMinutes() - best.attendedMinutes();
    if (above < 0) {
      throw new IllegalStateException("fewer minutes than are proved to be possible: " + best);
    }
    double percent = best.attendedMinutes() == 0 ? 0 : HUNDRED * above / best.attendedMinutes();
    return String.format(Locale.ROOT, "%.3f", percent);
  }
}
