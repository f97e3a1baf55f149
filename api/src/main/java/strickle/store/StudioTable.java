package strickle.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;

/** The statements on the table of studios. */
final class StudioTable {

  private StudioTable() {}

  static void create(Handle handle, StudioName studio, Optional<String> hash, Instant at) {
    handle
        .createUpdate(
            "insert into studio (id, name, password_hash, revision, mark, created_at)"
                + " values (:id, :name, :hash, 1, :mark, :at)")
        .bind("id", studio.id())
        .bind("name", studio.name())
        .bind("hash", hash.orElse(null))
        .bind("mark", newMark())
        .bind("at", at.toString())
        .execute();
  }

  static List<StudioName> all(Handle handle) {
    return handle
        .createQuery("select id, name from studio order by name")
        .map((row, context) -> new StudioName(row.getString("id"), row.getString("name")))
        .list();
  }

  /** The studio, if there is one only and it has no password. */
  static Optional<StudioName> onlyWithoutPassword(Handle handle) {
    return handle
        .createQuery(
            "select id, name from studio where password_hash is null"
                + " and (select count(*) from studio) = 1")
        .map((row, context) -> new StudioName(row.getString("id"), row.getString("name")))
        .findOne();
  }

  static Optional<String> passwordHash(Handle handle, String id) {
    return handle
        .createQuery(
            "select password_hash from studio where id = :id and password_hash is not null")
        .bind("id", id)
        .mapTo(String.class)
        .findOne();
  }

  static void setPasswordHash(Handle handle, String id, Optional<String> hash) {
    handle
        .createUpdate("update studio set password_hash = :hash where id = :id")
        .bind("id", id)
        .bind("hash", hash.orElse(null))
        .execute();
  }

  static Stand stand(Handle handle, String id) {
    return handle
        .createQuery("select revision, mark from studio where id = :id")
        .bind("id", id)
        .map((row, context) -> new Stand(row.getLong("revision"), row.getString("mark")))
        .one();
  }

  /**
   * Counts the revision up, which also keeps other writers away until the transaction ends.
   *
   * @return how far the studio had come before
   */
  static Stand leave(Handle handle, String id) {
    return handle
        .createQuery(
            "update studio set revision = revision + 1 where id = :id"
                + " returning revision - 1 as left_at, mark")
        .bind("id", id)
        .map((row, context) -> new Stand(row.getLong("left_at"), row.getString("mark")))
        .one();
  }

  /**
   * Gives the revision that was counted up to a mark of its own.
   *
   * @return how far the studio has come now
   */
  static Stand arrive(Handle handle, String id, Stand before) {
    Stand now = new Stand(before.revision() + 1, newMark());
    handle
        .createUpdate("update studio set mark = :mark where id = :id")
        .bind("id", id)
        .bind("mark", now.mark())
        .execute();
    return now;
  }

  private static String newMark() {
    return UUID.randomUUID().toString();
  }

  /** Keeps other writers of a studio away until the transaction ends. */
  static void hold(Handle handle, String id) {
    handle
        .createUpdate("update studio set revision = revision where id = :id")
        .bind("id", id)
        .execute();
  }

  /**
   * Keeps everybody else on a server from making a studio until the transaction ends; those who
   * only read go on.
   */
  static void holdAll(Handle handle) {
    handle.execute("lock table studio in share row exclusive mode");
  }
}
