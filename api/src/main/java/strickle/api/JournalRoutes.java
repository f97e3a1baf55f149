package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import strickle.json.Message;
import strickle.json.RawJson;
import strickle.json.StudioFile;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.store.Difference;
import strickle.store.Entries;
import strickle.store.Entry;
import strickle.store.JournalLine;
import strickle.store.Kept;
import strickle.store.StudioStore;

/** What was done to the studio, taking it back, and the studio as one file. */
final class JournalRoutes {

  private static final String TOPIC = "The journal";
  private static final int USUAL_PAGE = 50;
  private static final int LONGEST_PAGE = 500;
  private static final int STUDIO_BYTES = 64 * 1024 * 1024;

  /** Where a studio stands. */
  static final Shape REVISION = Shape.of(RevisionNow.class);

  /** A whole studio as a file. */
  static final Shape STUDIO_FILE = new Shape.Anything("A whole studio, strickle-studio/1.");

  /**
   * Where a studio stands.
   *
   * @param revision goes up by one with every change, undo and redo
   */
  public record RevisionNow(long revision) {}

  /**
   * Lines of the journal.
   *
   * @param items newest first
   * @param next what to give as "after" for older ones; nothing when there are none
   */
  public record Lines(List<JournalLine> items, Optional<String> next) {}

  /**
   * What one line changed.
   *
   * @param items thing by thing
   */
  public record Changes(List<Change> items) {}

  /**
   * How one thing was changed.
   *
   * @param collection what kind of thing
   * @param id its id
   * @param before its JSON before; nothing when it was not there
   * @param after its JSON after; nothing when it was removed
   */
  public record Change(
      String collection, String id, Optional<RawJson> before, Optional<RawJson> after) {}

  private JournalRoutes() {}

  /** The routes. */
  static List<Route> all() {
    return List.of(
        new Route(
            operation("GET", "/api/journal", "listJournal", "What was done.", "Newest first.")
                .with(
                    Parameter.query(
                        "limit",
                        Parameter.Kind.WHOLE,
                        "How many lines, 1 to 500; 50 without it.",
                        "50"))
                .with(
                    Parameter.query(
                        "after", Parameter.Kind.WHOLE, "Lines older than this number.", "120"))
                .answering(Answer.of(Status.OK, "The lines.", Shape.of(Lines.class))),
            JournalRoutes::list),
        new Route(
            operation(
                    "GET",
                    "/api/journal/{number}",
                    "readJournalLine",
                    "What one line changed.",
                    "Every thing with its body before and after.")
                .with(Parameter.path("number", "The number of the line.", "12"))
                .answering(Answer.of(Status.OK, "The changes.", Shape.of(Changes.class))),
            JournalRoutes::changes),
        new Route(
            operation(
                    "POST", "/api/undo", "undo", "Take the last change back.", "A line of its own.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .answering(Answer.of(Status.OK, "It is taken back.", REVISION, "ETag")),
            call -> moved(call, call.studio().undo(call.who(), seen(call)), "to undo")),
        new Route(
            operation("POST", "/api/redo", "redo", "Put it in again.", "What was undone last.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .answering(Answer.of(Status.OK, "It is in again.", REVISION, "ETag")),
            call -> moved(call, call.studio().redo(call.who(), seen(call)), "to redo")),
        new Route(
            operation(
                    "GET",
                    "/api/export",
                    "exportStudio",
                    "The whole studio as one file.",
                    "strickle-studio/1: the book and everything noted beside it.")
                .answering(Answer.of(Status.OK, "The file.", STUDIO_FILE, "ETag")),
            JournalRoutes::export),
        new Route(
            operation(
                    "PUT",
                    "/api/export",
                    "importStudio",
                    "Another studio in its place.",
                    "A file that was exported once, by this version or an older one. One change,"
                        + " which can be undone.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .taking(STUDIO_FILE, "")
                .answering(Answer.of(Status.OK, "It is in place.", REVISION, "ETag")),
            JournalRoutes::imported));
  }

  private static Reply list(Call call) {
    int limit = call.whole("limit", USUAL_PAGE, 1, LONGEST_PAGE);
    long below = call.whole("after", Integer.MAX_VALUE, 1, Integer.MAX_VALUE);
    List<JournalLine> lines = call.studio().journal(below, limit);
    boolean more = lines.size() == limit && lines.get(limit - 1).number() > 1;
    Optional<String> next =
        more ? Optional.of(Long.toString(lines.get(limit - 1).number())) : Optional.empty();
    return Reply.json(Status.OK, Message.write(new Lines(lines, next)));
  }

  private static Reply changes(Call call) {
    String number = call.path("number");
    List<Difference> differences =
        number.matches("[0-9]{1,9}")
            ? call.studio().journalDifferences(Long.parseLong(number))
            : List.of();
    if (differences.isEmpty()) {
      throw Refusal.notThere("line " + number + " in the journal");
    }
    List<Change> items = differences.stream().map(JournalRoutes::change).toList();
    return Reply.json(Status.OK, Message.write(new Changes(items)));
  }

  private static Change change(Difference difference) {
    return new Change(
        difference.collection(),
        difference.id(),
        difference.before().map(Entry::body).map(RawJson::new),
        difference.after().map(Entry::body).map(RawJson::new));
  }

  /** Refuses who has not seen what is there: nobody takes back what they have not seen. */
  static Consumer<Kept> seen(Call call) {
    return now -> Matching.check(call, call.tag(now), () -> BookRoutes.since(call));
  }

  private static Reply moved(Call call, Optional<Kept> kept, String what) {
    return revision(
        call,
        kept.orElseThrow(
            () ->
                new Refusal(
                    Problem.of(
                        Status.CONFLICT, "Nothing " + what, "There is nothing " + what + "."))));
  }

  /** Tells where the studio stands after a change. */
  static Reply revision(Call call, Kept kept) {
    return Reply.json(Status.OK, Message.write(new RevisionNow(kept.revision())))
        .with("ETag", call.tag(kept));
  }

  private static Reply export(Call call) {
    Kept now = call.studio().now();
    return Matching.reading(
        call, call.tag(now), () -> Reply.json(Status.OK, StudioFile.write(now.entries().parts())));
  }

  private static Reply imported(Call call) {
    StudioStore studio = call.studio();
    Entries there = Entries.ofParts(ImportCheck.of(StudioFile.parse(call.body(STUDIO_BYTES))));
    Kept kept =
        studio.change(
            call.by("a studio file put in place"),
            now -> {
              Matching.check(call, call.tag(now), () -> BookRoutes.since(call));
              return there;
            });
    return revision(call, kept);
  }

  private static Operation operation(
      String method, String path, String id, String summary, String description) {
    return Operation.of(method, path, id, TOPIC, summary, description);
  }
}
