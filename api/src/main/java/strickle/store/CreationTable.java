package strickle.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on creations that were asked for with a key. */
final class CreationTable {

  /** A creation that has happened. */
  record Creation(String requestHash, String reply) {}

  private CreationTable() {}

  static Optional<Creation> find(Handle handle, String studio, String key) {
    return handle
        .createQuery(
            "select request_hash, reply from creation"
                + " where studio_id = :studio and request_key = :key")
        .bind("studio", studio)
        .bind("key", key)
        .map((row, context) -> new Creation(row.getString("request_hash"), row.getString("reply")))
        .findOne();
  }

  static void add(Handle handle, String studio, Once once, String reply, Instant at) {
    handle
        .createUpdate(
            "insert into creation (studio_id, request_key, request_hash, reply, at)"
                + " values (:studio, :key, :hash, :reply, :at)")
        .bind("studio", studio)
        .bind("key", once.key())
        .bind("hash", once.requestHash())
        .bind("reply", reply)
        .bind("at", at.toString())
        .execute();
  }

  /** Forgets what is older than a moment. */
  static void forget(Handle handle, String studio, Instant before) {
    handle
        .createUpdate("delete from creation where studio_id = :studio and at < :before")
        .bind("studio", studio)
        .bind("before", before.toString())
        .execute();
  }
}
