package strickle.shop;

/**
 * How far a search is when it has found something better.
 *
 * @param nanos time since it began
 * @param schedules schedules generated so far
 * @param best the value of the best of them
 */
public record Report(long nanos, long schedules, Value best) {}
