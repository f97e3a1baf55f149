package strickle.plan.promise;

import java.time.OffsetDateTime;

/**
 * A present order that becomes ready later than planned.
 *
 * @param order its id
 * @param readyBefore when it is ready by the present plan
 * @param ready when it would be ready
 * @param lateMinutesBefore minutes late by the present plan, 0 or more
 * @param lateMinutes minutes late it would be, 0 or more
 */
public record Slip(
    String order,
    OffsetDateTime readyBefore,
    OffsetDateTime ready,
    long lateMinutesBefore,
    long lateMinutes) {

  /** Whether the buyer feels it: it would be late, and later than it is by the present plan. */
  public boolean isLater() {
    return lateMinutes > lateMinutesBefore;
  }
}
