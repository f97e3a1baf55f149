package strickle.plan;

import java.time.OffsetDateTime;

/**
 * An unattended wait of a run: the least that has to pass, not the idle time after it.
 *
 * @param run the run that waits
 * @param kind what for
 * @param from when it begins: the end of the task before, or for a set the end of the pour less
 *     washing up
 * @param to the first whole minute at or after its end; not before {@code from}
 */
public record Wait(String run, PlanWait kind, OffsetDateTime from, OffsetDateTime to) {

  /**
   * Refuses an end before the beginning.
   *
   * @throws strickle.book.Faulty when the end comes first, the run is blank, a part is missing or a
   *     year is not from 1970 to 2999
   */
  public Wait {
    Flaws flaws = new Flaws().id(".run", run).time(".from", from).time(".to", to);
    flaws.given(".kind", kind, "set, cure, dry or rest");
    flaws.order(".to", from, to).raise();
  }
}
