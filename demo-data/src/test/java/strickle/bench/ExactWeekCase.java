package strickle.bench;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import strickle.book.Book;
import strickle.demo.Generator;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;

/**
 * The planner's plan of a week beside the best there is.
 *
 * @param week the week
 * @param plan the planner's plan of it
 * @param flowMinutes its castings x minutes until they are ready
 * @param best the best plan
 * @param findings what the audit finds wrong with the best plan
 */
record ExactWeekCase(
    ExactWeekSample week,
    Plan plan,
    long flowMinutes,
    ExactWeek.Result best,
    List<Finding> findings) {

  /** Plans a week both ways. */
  static ExactWeekCase of(ExactWeekSample week, Effort effort, Duration limit) {
    Book book = week.book();
    OffsetDateTime from = Generator.start(book);
    Plan plan = plan(book, from, effort);
    ExactWeek.Result best = ExactWeek.solve(book, from, plan, limit);
    return new ExactWeekCase(week, plan, flow(plan), best, Audit.of(book, best.plan()));
  }

  /**
   * Plans weeks both ways, seed by seed, until the best plans of so many are proved to be best.
   * Those not proved within the limit are left out.
   *
   * @param each told of every week, also of those left out
   */
  static List<ExactWeekCase> proved(
      int weeks,
      int firstSeed,
      boolean crowded,
      Effort effort,
      Duration limit,
      Consumer<ExactWeekCase> each) {
    List<ExactWeekCase> proved = new ArrayList<>();
    for (int seed = firstSeed; proved.size() < weeks; seed++) {
      ExactWeekCase one = of(ExactWeekSample.of(seed, crowded), effort, limit);
      each.accept(one);
      if (one.best().attendedIsProved()) {
        proved.add(one);
      }
    }
    return proved;
  }

  static Plan plan(Book book, OffsetDateTime from, long schedules) {
    return plan(book, from, Effort.ofSchedules(schedules));
  }

  private static Plan plan(Book book, OffsetDateTime from, Effort effort) {
    PlanRequest request = new PlanRequest(from, effort, 0);
    return Planning.of(book, request, progress -> {}).run();
  }

  /** Castings x minutes from the beginning of a plan until they are ready. */
  static long flow(Plan plan) {
    Map<String, Long> minutes = new HashMap<>();
    for (Ready ready : plan.ready()) {
      minutes.put(ready.run(), Duration.between(plan.from(), ready.at()).toMinutes());
    }
    return plan.lots().stream()
        .flatMap(lot -> lot.runs().stream())
        .mapToLong((Run run) -> run.castings() * minutes.get(run.id()))
        .sum();
  }

  private BigDecimal late() {
    return plan.totals().weightedLateHours();
  }

  private long attended() {
    return plan.totals().attendedMinutes();
  }

  /** Whether no plan can have fewer weighted late hours than the planner's. */
  boolean isLeastLate() {
    return late().compareTo(best.lateHoursAtLeast()) == 0;
  }

  /**
   * By how much the planner's attended minutes exceed the fewest possible, in percent; 0 where it
   * is later than it need be, as the two plans then cannot be compared.
   */
  double attendedGapPercent() {
    return isLeastLate() ? percentAbove(attended(), best.attendedMinutesAtLeast()) : 0;
  }

  /** The same of the flow, where the planner's plan is as good as can be in the other two. */
  double flowGapPercent() {
    boolean comparable = isLeastLate() && attended() == best.attendedMinutesAtLeast();
    return comparable ? percentAbove(flowMinutes, best.flowMinutesAtLeast()) : 0;
  }

  private static double percentAbove(long value, long least) {
    return least == 0 ? 0 : 100.0 * (value - least) / least;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "castings=%d seed=%d lateHours=%s best=%s atLeast=%s attended=%d best=%d atLeast=%d"
            + " flow=%d best=%d atLeast=%d%s",
        week.castings(),
        week.seed(),
        late().toPlainString(),
        best.lateHours().toPlainString(),
        best.lateHoursAtLeast().toPlainString(),
        attended(),
        best.attendedMinutes(),
        best.attendedMinutesAtLeast(),
        flowMinutes,
        best.flowMinutes(),
        best.flowMinutesAtLeast(),
        findings.isEmpty() ? "" : " " + findings);
  }
}
