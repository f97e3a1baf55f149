package strickle.bench;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.logging.LogManager;
import strickle.book.Book;
import strickle.demo.Generator;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Cover;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;

/** Measures how near the bounds of generated weeks are to plans of them. */
final class BoundMeasure {

  private BoundMeasure() {}

  /**
   * Prints a line for each week.
   *
   * @param words castings, first seed, last seed, schedules of the plans, and at last {@code
   *     crowded} for weeks that are
   */
  public static void main(String[] words) {
    LogManager.getLogManager().reset();
    boolean crowded = words.length > 4 && words[4].equals("crowded");
    int last = Integer.parseInt(words[2]);
    for (int seed = Integer.parseInt(words[1]); seed <= last; seed++) {
      Book book = new ExactWeekSample(Integer.parseInt(words[0]), seed, crowded).book();
      System.out.println("seed=" + seed + " " + measure(book, Long.parseLong(words[3])));
    }
  }

  private static String measure(Book book, long schedules) {
    OffsetDateTime from = Generator.start(book);
    Plan plan = ExactWeekCase.plan(book, from, schedules);
    long began = System.nanoTime();
    Bounds bounds = Bounding.of(book, from, Cover.AVERAGE);
    double seconds = (System.nanoTime() - began) / 1e9;
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(200), 0);
    long reached =
        bounds.orders().stream()
            .filter(one -> Bounding.alone(book, request, one.order()).isEqual(one.alone()))
            .count();
    BigDecimal late = plan.totals().weightedLateHours();
    long attended = plan.totals().attendedMinutes();
    return String.format(
        Locale.ROOT,
        "lateHours=%s atLeast=%s attended=%d atLeast=%d gap=%.2f%% alone=%d of %d seconds=%.3f",
        late.toPlainString(),
        bounds.weightedLateHours().toPlainString(),
        attended,
        bounds.attendedMinutes(),
        100.0 * (attended - bounds.attendedMinutes()) / Math.max(1, bounds.attendedMinutes()),
        reached,
        bounds.orders().size(),
        seconds);
  }
}
