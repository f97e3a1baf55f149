package strickle.plan;

import java.time.Duration;
import java.time.OffsetDateTime;

/**
 * An uninterrupted stretch of a task.
 *
 * @param start when the person begins, to the minute, with the studio's offset at that moment
 * @param end when the person is done, exclusive, not before {@code start}; the record lets an empty
 *     spell pass, the audit does not
 */
public record Spell(OffsetDateTime start, OffsetDateTime end) {

  /**
   * Refuses an end before the start.
   *
   * @throws strickle.book.Faulty when the end comes first, a time is missing or its year is not
   *     from 1970 to 2999
   */
  public Spell {
    new Flaws().time(".start", start).time(".end", end).order(".end", start, end).raise();
  }

  /** Whole minutes from start to end, 0 or more, also across a clock change. */
  public long minutes() {
    return Duration.between(start, end).toMinutes();
  }
}
