package strickle.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import strickle.json.BookName;
import strickle.json.Message;
import strickle.plan.Totals;
import strickle.plan.replan.Thawed;
import strickle.store.KeptPlan.Kind;
import strickle.store.KeptPlan.State;

/** The statements on plans, as those who ask see them. */
final class PlanTable {

  private static final String HEAD =
      "select id, kind, state, created_at, changed_at, who, asked, progress, totals, thawed, why,"
          + " substr(book, 1, "
          + BookName.LENGTH
          + ") as book_begins from plan where studio_id = :studio";

  /** Thawed tasks as they are kept. */
  record ThawedTasks(List<Thawed> items) {}

  private PlanTable() {}

  /** How many wait. */
  static int waiting(Handle handle, String studio) {
    return handle
        .createQuery("select count(*) from plan where studio_id = :studio and state = 'waiting'")
        .bind("studio", studio)
        .mapTo(Integer.class)
        .one();
  }

  /** Puts a plan last in its studio's list. */
  static void add(
      Handle handle, String studio, KeptPlan plan, String book, Optional<String> present) {
    handle
        .createUpdate(
            "insert into plan (studio_id, id, number, kind, state, created_at, changed_at, who,"
                + " asked, book, present, attempts, stop_asked) values (:studio, :id,"
                + " (select coalesce(max(number), 0) + 1 from plan where studio_id = :studio),"
                + " :kind, :state, :at, :at, :who, :asked, :book, :present, 0, 0)")
        .bind("studio", studio)
        .bind("id", plan.id())
        .bind("kind", JournalLine.written(plan.kind()))
        .bind("state", JournalLine.written(plan.state()))
        .bind("at", plan.createdAt().toString())
        .bind("who", plan.who())
        .bind("asked", Message.write(plan.asked()))
        .bind("book", book)
        .bind("present", present.orElse(null))
        .execute();
  }

  static Optional<KeptPlan> find(Handle handle, String studio, String id) {
    return handle
        .createQuery(HEAD + " and id = :id")
        .bind("studio", studio)
        .bind("id", id)
        .map((row, context) -> head(row))
        .findOne();
  }

  /** The newest first; of one that is named only those asked for before it. */
  static List<KeptPlan> list(Handle handle, String studio, Optional<String> after, int most) {
    return handle
        .createQuery(
            HEAD
                + " and (:after = '' or number <"
                + " (select number from plan where studio_id = :studio and id = :after))"
                + " order by number desc limit :most")
        .bind("studio", studio)
        .bind("after", after.orElse(""))
        .bind("most", most)
        .map((row, context) -> head(row))
        .list();
  }

  /** One of the long texts of a plan: {@code book}, {@code present} or {@code result}. */
  static Optional<String> text(Handle handle, String studio, String id, Text column) {
    return handle
        .createQuery(column.query)
        .bind("studio", studio)
        .bind("id", id)
        .mapTo(String.class)
        .findOne();
  }

  /** The long texts of a plan. */
  enum Text {
    BOOK("select book from plan where studio_id = :studio and id = :id"),
    PRESENT(
        "select present from plan where studio_id = :studio and id = :id and present is not null"),
    RESULT("select result from plan where studio_id = :studio and id = :id and result is not null");

    private final String query;

    Text(String query) {
      this.query = query;
    }
  }

  /** Ends one that waits; asks one that is being laid out to end. */
  static void stop(Handle handle, String studio, String id, Instant at) {
    handle
        .createUpdate(
            "update plan set state = 'stopped', changed_at = :at,"
                + " why = 'It was stopped before it had begun.'"
                + " where studio_id = :studio and id = :id and state = 'waiting'")
        .bind("studio", studio)
        .bind("id", id)
        .bind("at", at.toString())
        .execute();
    handle
        .createUpdate(
            "update plan set stop_asked = 1"
                + " where studio_id = :studio and id = :id and state = 'running'")
        .bind("studio", studio)
        .bind("id", id)
        .execute();
  }

  /** The newest plan that came out as this text; nothing when none did. */
  static Optional<String> same(Handle handle, String studio, String result) {
    return handle
        .createQuery(
            "select id from plan where studio_id = :studio and result = :result"
                + " order by number desc limit 1")
        .bind("studio", studio)
        .bind("result", result)
        .mapTo(String.class)
        .findOne();
  }

  /** Removes one that is not being laid out; whether there was such a one. */
  static boolean remove(Handle handle, String studio, String id) {
    return handle
            .createUpdate(
                "delete from plan"
                    + " where studio_id = :studio and id = :id and state <> 'running'")
            .bind("studio", studio)
            .bind("id", id)
            .execute()
        > 0;
  }

  private static KeptPlan head(ResultSet row) throws SQLException {
    Optional<String> thawed = text(row, "thawed");
    return new KeptPlan(
        row.getString("id"),
        JournalLine.constant(Kind.class, row.getString("kind")),
        JournalLine.constant(State.class, row.getString("state")),
        Instant.parse(row.getString("created_at")),
        Instant.parse(row.getString("changed_at")),
        row.getString("who"),
        BookName.of(row.getString("book_begins")),
        Message.parse(row.getString("asked"), PlanAsked.class),
        text(row, "progress").map(json -> Message.parse(json, PlanProgress.class)),
        text(row, "totals").map(json -> Message.parse(json, Totals.class)),
        thawed.map(json -> Message.parse(json, ThawedTasks.class).items()).orElse(List.of()),
        text(row, "why"));
  }

  private static Optional<String> text(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getString(column));
  }
}
