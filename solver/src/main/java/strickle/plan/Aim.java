package strickle.plan;

import java.time.OffsetDateTime;

/**
 * What a search looks at in place of an order's due: each minute it is ready later costs so much.
 *
 * @param order the order's id
 * @param at a moment, to the minute
 * @param costPerMinute 0 or more; compared with that of other aims only
 */
public record Aim(String order, OffsetDateTime at, long costPerMinute) {

  /**
   * Refuses a cost below nothing.
   *
   * @throws strickle.book.Faulty when the order is blank, the moment is missing or of a year not
   *     from 1970 to 2999, or the cost is below 0
   */
  public Aim {
    Flaws flaws = new Flaws().id(".order", order).time(".at", at);
    flaws.atLeast(0, ".costPerMinute", costPerMinute).raise();
  }
}
