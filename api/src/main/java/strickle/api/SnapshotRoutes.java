package strickle.api;

import java.util.List;
import java.util.Optional;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.store.Once;
import strickle.store.Snapshot;

/** Keeping the studio as it is, and going back to it. */
final class SnapshotRoutes {

  private static final String TOPIC = "The journal";
  private static final int USUAL_PAGE = 50;
  private static final int LONGEST_PAGE = 500;

  /**
   * The snapshots there are.
   *
   * @param items newest first
   * @param next what to give as "after" for older ones; nothing when there are none
   */
  public record Snapshots(List<Snapshot> items, Optional<String> next) {}

  /**
   * Why a snapshot is taken.
   *
   * @param why in a few words, up to 200 characters
   */
  public record SnapshotWanted(String why) {

    private static final int LONGEST = 200;

    /** Shortens what is too long. */
    public SnapshotWanted {
      why = Call.start(why, LONGEST);
    }
  }

  private SnapshotRoutes() {}

  /** The routes. */
  static List<Route> all() {
    return List.of(
        new Route(
            operation(
                    "GET",
                    "/api/snapshots",
                    "listSnapshots",
                    "The snapshots.",
                    "One is kept before the first change of a day (UTC), thirty of them at most,"
                        + " and one whenever it is asked for.")
                .with(
                    Parameter.query(
                        "limit",
                        Parameter.Kind.WHOLE,
                        "How many on a page, 1 to 500; 50 without it.",
                        "50"))
                .with(
                    Parameter.query(
                        "after", Parameter.Kind.TEXT, "The \"next\" of the page before.", ""))
                .answering(Answer.of(Status.OK, "Newest first.", Shape.of(Snapshots.class))),
            SnapshotRoutes::snapshots),
        new Route(
            operation(
                    "POST", "/api/snapshots", "createSnapshot", "Keep the studio as it is.", "Now.")
                .with(Idempotency.PARAMETER)
                .taking(Shape.of(SnapshotWanted.class), "{\"why\": \"before the fair\"}")
                .answering(Answer.of(Status.CREATED, "It is kept.", Shape.of(Snapshot.class))),
            SnapshotRoutes::takeSnapshot),
        new Route(
            operation(
                    "GET",
                    "/api/snapshots/{id}",
                    "readSnapshot",
                    "The studio file of a snapshot.",
                    "The whole studio as it was, strickle-studio/1.")
                .with(Parameter.path("id", "Which snapshot.", "6f1b…"))
                .answering(Answer.of(Status.OK, "The file.", JournalRoutes.STUDIO_FILE)),
            SnapshotRoutes::snapshot),
        new Route(
            operation(
                    "POST",
                    "/api/snapshots/{id}/restore",
                    "restoreSnapshot",
                    "Go back to a snapshot.",
                    "A change like any other: it can be undone.")
                .with(Parameter.path("id", "Which snapshot.", "6f1b…"))
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .answering(
                    Answer.of(
                        Status.OK, "The studio is as it was.", JournalRoutes.REVISION, "ETag")),
            SnapshotRoutes::restore),
        new Route(
            operation(
                    "DELETE",
                    "/api/snapshots/{id}",
                    "removeSnapshot",
                    "No such snapshot any more.",
                    "For good. The studio and its journal stay as they are, and what was put back"
                        + " from it stays back.")
                .with(Parameter.path("id", "Which snapshot.", "6f1b…"))
                .answering(Answer.empty(Status.DONE, "It is gone.")),
            SnapshotRoutes::remove));
  }

  private static Operation operation(
      String method, String path, String id, String summary, String description) {
    return Operation.of(method, path, id, TOPIC, summary, description);
  }

  private static Reply snapshots(Call call) {
    List<Snapshot> all = call.studio().snapshots();
    int limit = call.whole("limit", USUAL_PAGE, 1, LONGEST_PAGE);
    int from = call.query("after").map(id -> place(all, id)).orElse(0);
    List<Snapshot> page = all.subList(from, Math.min(all.size(), from + limit));
    boolean more = from + page.size() < all.size();
    Optional<String> next = more ? Optional.of(page.get(page.size() - 1).id()) : Optional.empty();
    return Reply.json(Status.OK, Message.write(new Snapshots(page, next)));
  }

  private static int place(List<Snapshot> all, String id) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).id().equals(id)) {
        return i + 1;
      }
    }
    throw Refusal.malformed("after", Call.shown(id), "the \"next\" of the page before");
  }

  private static Reply takeSnapshot(Call call) {
    String body = call.body();
    SnapshotWanted wanted = Message.parse(body, SnapshotWanted.class);
    Optional<Once> once = Idempotency.of(call, "/api/snapshots", body);
    return call.studio()
        .takeSnapshot(wanted.why(), once)
        .map(snapshot -> Reply.json(Status.CREATED, Message.write(snapshot)))
        .orElseThrow(() -> Refusal.notThere("snapshot any more that was taken with this key"));
  }

  private static Reply snapshot(Call call) {
    String id = call.path("id");
    return call.studio()
        .snapshotFile(id)
        .map(file -> Reply.json(Status.OK, file))
        .orElseThrow(() -> Refusal.notThere("snapshot " + id));
  }

  private static Reply restore(Call call) {
    String id = call.path("id");
    return call.studio()
        .restore(call.who(), id, JournalRoutes.seen(call))
        .map(kept -> JournalRoutes.revision(call, kept))
        .orElseThrow(() -> Refusal.notThere("snapshot " + id));
  }

  private static Reply remove(Call call) {
    String id = call.path("id");
    if (!call.studio().removeSnapshot(id)) {
      throw Refusal.notThere("snapshot " + id);
    }
    return Reply.empty(Status.DONE);
  }
}
