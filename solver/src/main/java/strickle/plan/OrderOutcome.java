package strickle.plan;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * When an order is ready, how late, and why.
 *
 * @param order the order's id
 * @param ready when its last piece is ready, to the minute
 * @param lateMinutes minutes from due to ready, 0 when it is on time
 * @param because the chain of reasons; empty for an order on time
 */
public record OrderOutcome(
    String order, OffsetDateTime ready, long lateMinutes, List<String> because) {

  /**
   * Refuses an order that is late by less than nothing.
   *
   * @throws strickle.book.Faulty when the order is blank, a part is missing, the minutes are below
   *     0 or the year is not from 1970 to 2999
   */
  public OrderOutcome {
    Flaws flaws = new Flaws().id(".order", order).time(".ready", ready);
    because = flaws.list(".because", because);
    flaws.atLeast(0, ".lateMinutes", lateMinutes).raise();
  }
}
