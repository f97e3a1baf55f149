package strickle.bench;

import com.google.ortools.Loader;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Why;

/**
 * The best plan there is of a small week, by an exact model. It knows the rules of formats.md and
 * nothing of the planner: what it proves to be best, no order of claims and no decoder can beat.
 *
 * <p>What is proved is proved for all plans whose runs are ready within {@link #SLACK} of the last
 * one of the plan it starts from, so that the model has an end.
 */
public final class ExactWeek {

  /** How much longer than the plan it starts from a better one may take. */
  public static final Duration SLACK = Duration.ofDays(7);

  static {
    Loader.loadNativeLibraries();
  }

  private ExactWeek() {}

  /**
   * What was found.
   *
   * @param plan the best plan found, late orders with their reasons
   * @param lateHours its weighted late hours
   * @param lateHoursAtLeast no plan has fewer
   * @param attendedMinutes its attended minutes
   * @param attendedMinutesAtLeast no plan with so few late hours has fewer
   * @param flowMinutes its castings x minutes until they are ready
   * @param flowMinutesAtLeast no plan with so few late hours and attended minutes has fewer
   */
  public record Result(
      Plan plan,
      BigDecimal lateHours,
      BigDecimal lateHoursAtLeast,
      long attendedMinutes,
      long attendedMinutesAtLeast,
      long flowMinutes,
      long flowMinutesAtLeast) {

    /** Whether no plan has fewer weighted late hours. */
    public boolean lateIsProved() {
      return lateHours.compareTo(lateHoursAtLeast) == 0;
    }

    /** Whether that holds, and no plan as little late has fewer attended minutes. */
    public boolean attendedIsProved() {
      return lateIsProved() && attendedMinutes == attendedMinutesAtLeast;
    }

    /** Whether that holds, and no plan as good in both has a smaller flow. */
    public boolean flowIsProved() {
      return attendedIsProved() && flowMinutes == flowMinutesAtLeast;
    }
  }

  /**
   * Looks for a plan with the fewest weighted late hours and among those the fewest attended
   * minutes.
   *
   * @param from where the plan begins
   * @param hint a valid plan of the book from there on
   * @param limit the longest to look, for each of the two
   * @throws IllegalStateException when the hint breaks a rule of the model
   */
  public static Result solve(Book book, OffsetDateTime from, Plan hint, Duration limit) {
    return solve(book, from, hint, limit, SLACK);
  }

  static Result solve(Book book, OffsetDateTime from, Plan hint, Duration limit, Duration slack) {
    ExactWeekTime time = new ExactWeekTime(from, book.studio().timeZone());
    int horizon = time.minute(hint.totals().lastReady().toInstant()) + (int) slack.toMinutes();
    ExactWeekModel week = new ExactWeekModel(book, time, horizon);
    ExactWeekSearch search = new ExactWeekSearch(week, hint);
    ExactWeekSearch.Least late = search.least(week.late(), limit);
    week.model.addLessOrEqual(week.late(), late.value());
    ExactWeekSearch.Least attended = search.least(week.attended(), limit);
    week.model.addLessOrEqual(week.attended(), attended.value());
    ExactWeekSearch.Least flow = search.least(week.flow(), limit);
    Plan plan = explained(book, ExactWeekPlan.of(week, search));
    BigDecimal scale = BigDecimal.valueOf(week.weightScale());
    return new Result(
        plan,
        BigDecimal.valueOf(late.value()).divide(scale),
        BigDecimal.valueOf(late.bound()).divide(scale),
        attended.value(),
        attended.bound(),
        flow.value(),
        flow.bound());
  }

  private static Plan explained(Book book, Plan plan) {
    List<OrderOutcome> orders = new ArrayList<>();
    for (OrderOutcome one : plan.orders()) {
      List<String> because = one.lateMinutes() == 0 ? List.of() : Why.of(book, plan, one.order());
      orders.add(new OrderOutcome(one.order(), one.ready(), one.lateMinutes(), because));
    }
    return new Plan(
        plan.book(),
        plan.from(),
        plan.seed(),
        plan.lots(),
        plan.tasks(),
        plan.waits(),
        plan.ready(),
        orders,
        plan.totals());
  }
}
