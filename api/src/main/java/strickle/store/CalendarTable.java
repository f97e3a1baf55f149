package strickle.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on secret calendar addresses. A secret is nowhere, only its SHA-256. */
final class CalendarTable {

  private CalendarTable() {}

  static void set(Handle handle, String studio, String secretHash, Instant at) {
    remove(handle, studio);
    handle
        .createUpdate(
            "insert into calendar_address (studio_id, secret_hash, created_at)"
                + " values (:studio, :hash, :at)")
        .bind("studio", studio)
        .bind("hash", secretHash)
        .bind("at", at.toString())
        .execute();
  }

  static void remove(Handle handle, String studio) {
    handle
        .createUpdate("delete from calendar_address where studio_id = :studio")
        .bind("studio", studio)
        .execute();
  }

  static Optional<Instant> since(Handle handle, String studio) {
    return handle
        .createQuery("select created_at from calendar_address where studio_id = :studio")
        .bind("studio", studio)
        .mapTo(String.class)
        .findOne()
        .map(Instant::parse);
  }

  static Optional<String> studio(Handle handle, String secretHash) {
    return handle
        .createQuery("select studio_id from calendar_address where secret_hash = :hash")
        .bind("hash", secretHash)
        .mapTo(String.class)
        .findOne();
  }
}
