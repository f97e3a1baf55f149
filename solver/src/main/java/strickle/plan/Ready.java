package strickle.plan;

import java.time.OffsetDateTime;

/**
 * When a run is ready.
 *
 * @param run the run
 * @param at when its last step and its last wait are over, to the minute
 */
public record Ready(String run, OffsetDateTime at) {

  /**
   * Refuses a nameless run.
   *
   * @throws strickle.book.Faulty when the run is blank or the year is not from 1970 to 2999
   */
  public Ready {
    new Flaws().id(".run", run).time(".at", at).raise();
  }
}
