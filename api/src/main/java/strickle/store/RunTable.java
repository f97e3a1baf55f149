package strickle.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jdbi.v3.core.Handle;

/**
 * The statements on plans, as those who lay them out see them. An attempt has a name of its own:
 * once another attempt has taken the plan, the first can write nothing any more.
 */
final class RunTable {

  /** Where a plan stands. */
  record Place(String studio, String id) {}

  private RunTable() {}

  /** Every plan of every studio that is not over, in the order in which they were asked for. */
  static List<Place> unfinished(Handle handle) {
    return handle
        .createQuery(
            "select studio_id, id from plan where state in ('waiting', 'running')"
                + " order by created_at, number")
        .map((row, context) -> new Place(row.getString("studio_id"), row.getString("id")))
        .list();
  }

  /**
   * Takes a plan that is not over.
   *
   * @return how many attempts there have been with this one; nothing when there is nothing to take
   */
  static OptionalInt take(Handle handle, Place place, String attempt, Instant at) {
    return handle
        .createQuery(
            "update plan set state = 'running', runner = :attempt, changed_at = :at,"
                + " attempts = attempts + 1, progress = null"
                + " where studio_id = :studio and id = :id and state in ('waiting', 'running')"
                + " returning attempts")
        .bind("studio", place.studio())
        .bind("id", place.id())
        .bind("attempt", attempt)
        .bind("at", at.toString())
        .mapTo(Integer.class)
        .findOne()
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }

  /**
   * Notes how far it is.
   *
   * @return whether it shall end; nothing when it is no longer this attempt's
   */
  static Optional<Boolean> note(
      Handle handle, Place place, String attempt, Optional<String> progress) {
    return handle
        .createQuery(
            "update plan set progress = :progress where studio_id = :studio and id = :id"
                + " and runner = :attempt and state = 'running' returning stop_asked")
        .bind("studio", place.studio())
        .bind("id", place.id())
        .bind("attempt", attempt)
        .bind("progress", progress.orElse(null))
        .mapTo(Long.class)
        .findOne()
        .map(asked -> asked > 0);
  }

  /** What a plan comes to. */
  record End(
      KeptPlan.State state,
      Optional<String> totals,
      Optional<String> thawed,
      Optional<String> result,
      Optional<String> why) {

    /** One that failed. */
    static End failed(String why) {
      return new End(
          KeptPlan.State.FAILED,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.of(why));
    }
  }

  /** Notes what has come of it, if it is still this attempt's. */
  static void end(Handle handle, Place place, String attempt, End end, Instant at) {
    handle
        .createUpdate(
            "update plan set state = :state, changed_at = :at, totals = :totals,"
                + " thawed = :thawed, result = :result, why = :why, runner = null"
                + " where studio_id = :studio and id = :id and runner = :attempt"
                + " and state = 'running'")
        .bind("studio", place.studio())
        .bind("id", place.id())
        .bind("attempt", attempt)
        .bind("state", JournalLine.written(end.state()))
        .bind("at", at.toString())
        .bind("totals", end.totals().orElse(null))
        .bind("thawed", end.thawed().orElse(null))
        .bind("result", end.result().orElse(null))
        .bind("why", end.why().orElse(null))
        .execute();
  }

  /** Puts it back to wait, as if this attempt had not been. */
  static void putBack(Handle handle, Place place, String attempt, Instant at) {
    handle
        .createUpdate(
            "update plan set state = 'waiting', changed_at = :at, runner = null, progress = null,"
                + " attempts = attempts - 1"
                + " where studio_id = :studio and id = :id and runner = :attempt"
                + " and state = 'running'")
        .bind("studio", place.studio())
        .bind("id", place.id())
        .bind("attempt", attempt)
        .bind("at", at.toString())
        .execute();
  }

  /** Forgets what the library thinks it is at; for a database that no other process has open. */
  static void clearQueue(Handle handle) {
    handle.execute("delete from scheduled_tasks");
  }
}
