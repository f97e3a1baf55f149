package strickle.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.logging.LogManager;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.demo.Generator;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Progress;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;

/**
 * Plans one made-up book and prints how that went. It stands in this module because the generator
 * does; the bench of the solver starts it as a program of its own.
 */
public final class Week {

  private static final int FAILED = 1;
  private static final int WRONG = 2;

  /** Long enough for the difference of two plannings to say something. */
  private static final double LONG_ENOUGH_SECONDS = 1;

  private static final long FEWEST_SCHEDULES = 16;
  private static final long MOST_SCHEDULES = 1_000_000_000;
  private static final long STEP = 4;
  private static final double NANOS = 1e9;
  private static final double MILLION = 1e6;

  private final Book book;
  private final long seed;

  private Week(Book book, long seed) {
    this.book = book;
    this.seed = seed;
  }

  /**
   * Measures one size and ends the process: 0 when done, 2 for wrong input, 1 for anything else.
   *
   * @param words castings, seconds, seed, and the seconds the exact model may take for each part of
   *     a plan's value, 0 for no model; all whole numbers
   */
  public static void main(String[] words) {
    LogManager.getLogManager().reset();
    int castings = Integer.parseInt(words[0]);
    long seed = Long.parseLong(words[2]);
    try {
      Week week = new Week(Generator.book(castings, seed), seed);
      Duration time = Duration.ofSeconds(Long.parseLong(words[1]));
      Duration exact = Duration.ofSeconds(Long.parseLong(words[3]));
      System.out.println("castings=" + castings + " " + week.measure(time, exact));
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> System.err.println("bench: " + fault));
      System.exit(WRONG);
    } catch (IllegalStateException failed) {
      System.err.println("bench: " + failed.getMessage());
      System.exit(FAILED);
    }
  }

  private String measure(Duration time, Duration exact) {
    if (exact.isPositive()) {
      ExactGap.refuseOtherMachines();
    }
    Course course = new Course();
    long began = System.nanoTime();
    Plan plan = plan(Effort.ofTime(time), progress -> course.add(moment(began, progress)));
    double peak = peakBytes();
    List<Finding> findings = Audit.of(book, plan);
    if (!findings.isEmpty()) {
      throw new IllegalStateException("the audit refuses the plan: " + findings);
    }
    String line =
        String.format(
            Locale.ROOT,
            "weightedLateHours=%s attendedMinutes=%d schedulesPerSecond=%s"
                + " firstPlanSeconds=%.3f within1PercentSeconds=%.3f peakMegabytes=%.0f",
            plan.totals().weightedLateHours().toPlainString(),
            plan.totals().attendedMinutes(),
            schedulesPerSecond(),
            course.firstSeconds(),
            course.nearSeconds(),
            peak / MILLION);
    return exact.isPositive() ? line + ExactGap.of(book, plan, exact) : line;
  }

  private static Course.Moment moment(long began, Progress progress) {
    double seconds = (System.nanoTime() - began) / NANOS;
    return new Course.Moment(seconds, progress.weightedLateHours(), progress.attendedMinutes());
  }

  /**
   * What more schedules take longer than fewer, so that all that comes once is left out; a dash
   * when there are never more, because a search that finds nothing new to try ends by itself.
   */
  private String schedulesPerSecond() {
    long fewer = FEWEST_SCHEDULES;
    double before = secondsFor(fewer);
    for (long more = STEP * fewer; more < MOST_SCHEDULES; more *= STEP) {
      double after = secondsFor(more);
      if (after - before >= LONG_ENOUGH_SECONDS) {
        return Long.toString(Math.round((more - fewer) / (after - before)));
      }
      fewer = more;
      before = after;
    }
    return "-";
  }

  /** Seconds of the processor, not of the wall: what else runs on the machine does not count. */
  private double secondsFor(long schedules) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long began = threads.getCurrentThreadCpuTime();
    plan(Effort.ofSchedules(schedules), progress -> {});
    return (threads.getCurrentThreadCpuTime() - began) / NANOS;
  }

  private Plan plan(Effort effort, Consumer<Progress> listener) {
    PlanRequest request = new PlanRequest(Generator.start(book), effort, seed);
    return Planning.of(book, request, listener).run();
  }

  private static double peakBytes() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .map(MemoryPoolMXBean::getPeakUsage)
        .mapToDouble(usage -> usage.getUsed())
        .sum();
  }
}
