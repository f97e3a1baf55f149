package strickle.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on sessions. A session's token is nowhere, only its SHA-256. */
final class SessionTable {

  private SessionTable() {}

  static void add(Handle handle, String studio, String tokenHash, Instant at, Instant end) {
    handle
        .createUpdate(
            "insert into session (token_hash, studio_id, created_at, ends_at)"
                + " values (:token, :studio, :at, :end)")
        .bind("token", tokenHash)
        .bind("studio", studio)
        .bind("at", at.toString())
        .bind("end", end.toString())
        .execute();
  }

  static Optional<Session> find(Handle handle, String tokenHash) {
    return handle
        .createQuery(
            "select s.id, s.name, t.ends_at from session t join studio s on s.id = t.studio_id"
                + " where t.token_hash = :token")
        .bind("token", tokenHash)
        .map(
            (row, context) ->
                new Session(
                    new StudioName(row.getString("id"), row.getString("name")),
                    Instant.parse(row.getString("ends_at"))))
        .findOne();
  }

  static void remove(Handle handle, String tokenHash) {
    handle
        .createUpdate("delete from session where token_hash = :token")
        .bind("token", tokenHash)
        .execute();
  }

  static void removeAllOf(Handle handle, String studio) {
    handle
        .createUpdate("delete from session where studio_id = :studio")
        .bind("studio", studio)
        .execute();
  }

  /** Forgets those of a studio that have ended. */
  static void removeEnded(Handle handle, String studio, Instant now) {
    handle
        .createUpdate("delete from session where studio_id = :studio and ends_at <= :now")
        .bind("studio", studio)
        .bind("now", now.toString())
        .execute();
  }
}
