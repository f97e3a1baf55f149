package strickle.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The statements on the table of what studios hold. */
final class EntryTable {

  /** What one statement saw: how far a studio has come, and everything of it. */
  record Seen(Stand stand, Entries entries) {}

  private EntryTable() {}

  /** Everything of a studio, seen at one moment. */
  static Seen all(Handle handle, String studio) {
    List<Entry> things = new ArrayList<>();
    Stand[] stand = {new Stand(0, "")};
    handle
        .createQuery(
            "select s.revision, s.mark, e.collection, e.id, e.position, e.body from studio s"
                + " left join entry e on e.studio_id = s.id where s.id = :studio")
        .bind("studio", studio)
        .map(
            (row, context) -> {
              stand[0] = new Stand(row.getLong("revision"), row.getString("mark"));
              if (row.getString("collection") != null) {
                things.add(
                    new Entry(
                        row.getString("collection"),
                        row.getString("id"),
                        row.getLong("position"),
                        row.getString("body")));
              }
              return things;
            })
        .list();
    return new Seen(stand[0], Entries.of(things));
  }

  /** Puts differences in. */
  static void apply(Handle handle, String studio, List<Difference> differences) {
    remove(handle, studio, differences);
    PreparedBatch batch =
        handle.prepareBatch(
            "insert into entry (studio_id, collection, id, position, body)"
                + " values (:studio, :collection, :id, :position, :body)"
                + " on conflict (studio_id, collection, id)"
                + " do update set position = excluded.position, body = excluded.body");
    for (Difference difference : differences) {
      difference.after().ifPresent(thing -> batch.bindMap(named(studio, thing)).add());
    }
    execute(batch);
  }

  private static void remove(Handle handle, String studio, List<Difference> differences) {
    PreparedBatch batch =
        handle.prepareBatch(
            "delete from entry"
                + " where studio_id = :studio and collection = :collection and id = :id");
    for (Difference difference : differences) {
      if (difference.after().isEmpty()) {
        batch
            .bind("studio", studio)
            .bind("collection", difference.collection())
            .bind("id", difference.id())
            .add();
      }
    }
    execute(batch);
  }

  private static void execute(PreparedBatch batch) {
    if (batch.size() > 0) {
      batch.execute();
    }
  }

  private static Map<String, Object> named(String studio, Entry thing) {
    return Map.of(
        "studio", studio,
        "collection", thing.collection(),
        "id", thing.id(),
        "position", thing.position(),
        "body", thing.body());
  }
}
