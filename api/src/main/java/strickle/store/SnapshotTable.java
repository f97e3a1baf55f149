package strickle.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on snapshots. */
final class SnapshotTable {

  private SnapshotTable() {}

  static void add(Handle handle, String studio, Snapshot snapshot, String body) {
    handle
        .createUpdate(
            "insert into snapshot (studio_id, id, at, why, body)"
                + " values (:studio, :id, :at, :why, :body)")
        .bind("studio", studio)
        .bind("id", snapshot.id())
        .bind("at", snapshot.at().toString())
        .bind("why", snapshot.why())
        .bind("body", body)
        .execute();
  }

  /** Newest first. */
  static List<Snapshot> all(Handle handle, String studio) {
    return handle
        .createQuery(
            "select id, at, why from snapshot where studio_id = :studio order by at desc, id")
        .bind("studio", studio)
        .map((row, context) -> snapshot(row))
        .list();
  }

  /** Whether there is one of a day (UTC). */
  static boolean isAnyOf(Handle handle, String studio, LocalDate day) {
    return handle
            .createQuery(
                "select count(*) from snapshot"
                    + " where studio_id = :studio and at >= :day and at < :next")
            .bind("studio", studio)
            .bind("day", day.toString())
            .bind("next", day.plusDays(1).toString())
            .mapTo(Long.class)
            .one()
        > 0;
  }

  static Optional<String> body(Handle handle, String studio, String id) {
    return handle
        .createQuery("select body from snapshot where studio_id = :studio and id = :id")
        .bind("studio", studio)
        .bind("id", id)
        .mapTo(String.class)
        .findOne();
  }

  /** Removes one; whether there was such a one. */
  static boolean remove(Handle handle, String studio, String id) {
    return handle
            .createUpdate("delete from snapshot where studio_id = :studio and id = :id")
            .bind("studio", studio)
            .bind("id", id)
            .execute()
        > 0;
  }

  private static Snapshot snapshot(ResultSet row) throws SQLException {
    return new Snapshot(
        row.getString("id"), Instant.parse(row.getString("at")), row.getString("why"));
  }
}
