package strickle.plan;

import java.time.OffsetDateTime;

/**
 * What is asked of the planner.
 *
 * @param from the first moment that may be planned
 * @param effort how long to search
 * @param seed where the search's chance begins: the same seed, book, start and number of schedules
 *     give the same plan
 */
public record PlanRequest(OffsetDateTime from, Effort effort, long seed) {

  /**
   * Refuses a request without a start or an effort.
   *
   * @throws strickle.book.Faulty when one is missing or the year is not from 1970 to 2999
   */
  public PlanRequest {
    Flaws flaws = new Flaws().time(".from", from);
    flaws.given(".effort", effort, "how long to search");
    flaws.raise();
  }
}
