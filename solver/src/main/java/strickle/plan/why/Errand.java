package strickle.plan.why;

/**
 * A task of somebody, and what it is of.
 *
 * @param course the run, or for a pour one of the runs poured
 * @param stage which of its stages
 * @param task when
 */
record Errand(Course course, int stage, Placed task) {}
