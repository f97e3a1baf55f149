package strickle.store;

import java.math.BigDecimal;

/**
 * How far a plan is.
 *
 * @param elapsedSeconds since it was begun, to the tenth
 * @param schedules schedules laid out when the best so far was found
 * @param weightedLateHours Σ over the orders of weight x started late hours in the best so far
 * @param attendedMinutes minutes of all its tasks together
 */
public record PlanProgress(
    BigDecimal elapsedSeconds,
    long schedules,
    BigDecimal weightedLateHours,
    long attendedMinutes) {}
