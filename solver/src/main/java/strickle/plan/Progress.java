package strickle.plan;

import java.math.BigDecimal;
import java.time.Duration;

/**
 * How far the planner is when it has found a better plan.
 *
 * @param elapsed time since it began
 * @param schedules schedules laid out so far
 * @param weightedLateHours Σ over the orders of weight x started late hours in the best of them
 * @param attendedMinutes minutes of all its tasks together
 */
public record Progress(
    Duration elapsed, long schedules, BigDecimal weightedLateHours, long attendedMinutes) {}
