package strickle.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import strickle.store.JournalLine.Kind;
import strickle.store.JournalLine.State;

/** The statements on a studio's journal. */
final class JournalTable {

  private static final String LINE =
      "select number, at, who, what, kind, of_number, state from journal"
          + " where studio_id = :studio";
  private static final String CHANGE = LINE + " and kind = 'change' and state = :state";

  private JournalTable() {}

  static long nextNumber(Handle handle, String studio) {
    return handle
        .createQuery("select coalesce(max(number), 0) + 1 from journal where studio_id = :studio")
        .bind("studio", studio)
        .mapTo(Long.class)
        .one();
  }

  static void add(Handle handle, String studio, JournalLine line, List<Difference> differences) {
    handle
        .createUpdate(
            "insert into journal (studio_id, number, at, who, what, kind, of_number, state)"
                + " values (:studio, :number, :at, :who, :what, :kind, :of, :state)")
        .bind("studio", studio)
        .bind("number", line.number())
        .bind("at", line.at().toString())
        .bind("who", line.who())
        .bind("what", line.what())
        .bind("kind", JournalLine.written(line.kind()))
        .bind("of", line.of().isPresent() ? (Long) line.of().getAsLong() : null)
        .bind("state", JournalLine.written(line.state()))
        .execute();
    addDifferences(handle, studio, line.number(), differences);
  }

  private static void addDifferences(
      Handle handle, String studio, long number, List<Difference> differences) {
    PreparedBatch batch =
        handle.prepareBatch(
            "insert into journal_change (studio_id, number, ordinal, collection, id,"
                + " position_before, body_before, position_after, body_after)"
                + " values (:studio, :number, :ordinal, :collection, :id,"
                + " :positionBefore, :bodyBefore, :positionAfter, :bodyAfter)");
    for (int i = 0; i < differences.size(); i++) {
      Difference difference = differences.get(i);
      batch
          .bind("studio", studio)
          .bind("number", number)
          .bind("ordinal", i)
          .bind("collection", difference.collection())
          .bind("id", difference.id())
          .bind("positionBefore", difference.before().map(Entry::position).orElse(null))
          .bind("bodyBefore", difference.before().map(Entry::body).orElse(null))
          .bind("positionAfter", difference.after().map(Entry::position).orElse(null))
          .bind("bodyAfter", difference.after().map(Entry::body).orElse(null))
          .add();
    }
    if (batch.size() > 0) {
      batch.execute();
    }
  }

  /** Marks every change of one state with another. */
  static void setState(Handle handle, String studio, State from, State to) {
    handle
        .createUpdate(
            "update journal set state = :to"
                + " where studio_id = :studio and kind = 'change' and state = :from")
        .bind("studio", studio)
        .bind("from", JournalLine.written(from))
        .bind("to", JournalLine.written(to))
        .execute();
  }

  /** Marks one change. */
  static void setState(Handle handle, String studio, long number, State state) {
    handle
        .createUpdate(
            "update journal set state = :state where studio_id = :studio and number = :number")
        .bind("studio", studio)
        .bind("number", number)
        .bind("state", JournalLine.written(state))
        .execute();
  }

  /** The change an undo would take back. */
  static Optional<JournalLine> lastDone(Handle handle, String studio) {
    return first(handle, studio, State.DONE, true);
  }

  /** The change a redo would put in again: of those undone the one undone last. */
  static Optional<JournalLine> lastUndone(Handle handle, String studio) {
    return first(handle, studio, State.UNDONE, false);
  }

  private static Optional<JournalLine> first(
      Handle handle, String studio, State state, boolean newest) {
    return (newest
            ? handle.createQuery(CHANGE + " order by number desc limit 1")
            : handle.createQuery(CHANGE + " order by number limit 1"))
        .bind("studio", studio)
        .bind("state", JournalLine.written(state))
        .map((row, context) -> line(row))
        .findOne();
  }

  /** Lines below a number, newest first. */
  static List<JournalLine> below(Handle handle, String studio, long number, int most) {
    return handle
        .createQuery(LINE + " and number < :number order by number desc limit :most")
        .bind("studio", studio)
        .bind("number", number)
        .bind("most", most)
        .map((row, context) -> line(row))
        .list();
  }

  /** What a line changed, in its order. */
  static List<Difference> differences(Handle handle, String studio, long number) {
    return handle
        .createQuery(
            "select collection, id, position_before, body_before, position_after, body_after"
                + " from journal_change where studio_id = :studio and number = :number"
                + " order by ordinal")
        .bind("studio", studio)
        .bind("number", number)
        .map((row, context) -> new Difference(entry(row, "before"), entry(row, "after")))
        .list();
  }

  private static Optional<Entry> entry(ResultSet row, String side) throws SQLException {
    String body = row.getString("body_" + side);
    return body == null
        ? Optional.empty()
        : Optional.of(
            new Entry(
                row.getString("collection"),
                row.getString("id"),
                row.getLong("position_" + side),
                body));
  }

  private static JournalLine line(ResultSet row) throws SQLException {
    long of = row.getLong("of_number");
    OptionalLong named = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(of);
    Kind kind = JournalLine.constant(Kind.class, row.getString("kind"));
    return new JournalLine(
        row.getLong("number"),
        Instant.parse(row.getString("at")),
        row.getString("who"),
        row.getString("what"),
        kind,
        named,
        JournalLine.constant(State.class, row.getString("state")));
  }
}
