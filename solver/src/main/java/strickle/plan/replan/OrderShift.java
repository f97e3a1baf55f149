package strickle.plan.replan;

import java.time.OffsetDateTime;

/**
 * An order that gets later or earlier.
 *
 * @param order its id
 * @param before when it was to be ready
 * @param after when it will be
 * @param minutes by how many minutes it gets later; below 0: earlier
 * @param lateBefore by how many minutes it was to miss its due date, 0 or more
 * @param lateAfter by how many it will
 */
public record OrderShift(
    String order,
    OffsetDateTime before,
    OffsetDateTime after,
    long minutes,
    long lateBefore,
    long lateAfter) {}
