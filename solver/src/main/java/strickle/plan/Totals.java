package strickle.plan;

import java.math.BigDecimal;
import java.time.OffsetDateTime;

/**
 * The totals of a plan.
 *
 * @param weightedLateHours Σ over orders of weight x started late hours, 0 or more
 * @param lateOrders orders ready after they are due, 0 or more
 * @param attendedMinutes minutes of all tasks together, 0 or more
 * @param lots how many lots are mixed, 0 or more
 * @param lastReady when the last run is ready; the plan's {@code from} when there is no run
 */
public record Totals(
    BigDecimal weightedLateHours,
    int lateOrders,
    long attendedMinutes,
    int lots,
    OffsetDateTime lastReady) {

  /**
   * Refuses anything below nothing.
   *
   * @throws strickle.book.Faulty when a figure is below 0 or missing or the year is not from 1970
   *     to 2999
   */
  public Totals {
    Flaws flaws = new Flaws();
    boolean wrong = weightedLateHours == null || weightedLateHours.signum() < 0;
    flaws.when(wrong, ".weightedLateHours", weightedLateHours, "a number of hours, 0 or more");
    flaws.atLeast(0, ".lateOrders", lateOrders).atLeast(0, ".attendedMinutes", attendedMinutes);
    flaws.atLeast(0, ".lots", lots).time(".lastReady", lastReady).raise();
    weightedLateHours = plain(weightedLateHours);
  }

  /** Without zeros that say nothing, so that 3.0 hours and 3 hours are equal. */
  private static BigDecimal plain(BigDecimal hours) {
    BigDecimal stripped = hours.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
