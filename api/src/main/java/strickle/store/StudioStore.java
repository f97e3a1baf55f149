package strickle.store;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import strickle.book.Book;
import strickle.json.BookParts;
import strickle.json.StudioFile;
import strickle.store.JournalLine.Kind;
import strickle.store.JournalLine.State;

/**
 * One studio in the database. Every change is one transaction that leaves the book valid, and a
 * line in the journal; whoever changes sees what is there at that very moment, and nobody else can
 * change it meanwhile.
 */
public final class StudioStore {

  private final Database database;
  private final StudioName studio;
  private final Clock clock;
  private final SnapshotKeeping keeping;
  private final Creations creations;
  private final AtomicReference<Kept> newest = new AtomicReference<>();

  /** The studio of this name in a database; it must be there. */
  StudioStore(Database database, StudioName studio, Clock clock) {
    this.database = database;
    this.studio = studio;
    this.clock = clock;
    this.creations = new Creations(studio.id(), clock);
    this.keeping = new SnapshotKeeping(studio.id(), clock, creations);
  }

  /** Which studio it is. */
  public StudioName studio() {
    return studio;
  }

  /** The plans that were asked for. */
  public Plans plans() {
    return new Plans(database, studio.id(), clock);
  }

  /** What the studio holds now. */
  public Kept now() {
    Stand stand = database.read(handle -> StudioTable.stand(handle, studio.id()));
    Kept known = newest.get();
    if (known != null && known.stand().equals(stand)) {
      return known;
    }
    return remembered(database.read(this::read));
  }

  /**
   * Changes the studio. When nothing differs afterwards, nothing is written.
   *
   * @param by for the journal
   * @param edit says, of what is there, what there shall be; may refuse by throwing
   * @return what the studio holds then
   * @throws strickle.book.Faulty when it would leave no valid book; nothing is changed
   */
  public Kept change(By by, Function<Kept, Entries> edit) {
    return remembered(database.write(handle -> changed(handle, by, locked(handle), edit)));
  }

  /**
   * Creates something once: asked again with the same key, it gives the same reply and changes
   * nothing.
   *
   * @throws KeyReused when the key stands for another request
   */
  public String create(By by, Once once, Function<Kept, Made> edit) {
    String[] reply = {""};
    Kept kept =
        database.write(
            handle -> {
              Kept now = locked(handle);
              Optional<String> before = creations.replied(handle, once);
              if (before.isPresent()) {
                reply[0] = before.get();
                handle.rollback();
                return now;
              }
              Kept after =
                  changed(
                      handle,
                      by,
                      now,
                      kept0 -> {
                        Made made = edit.apply(kept0);
                        reply[0] = made.reply();
                        return made.entries();
                      });
              creations.remember(handle, once, reply[0]);
              return after;
            });
    remembered(kept);
    return reply[0];
  }

  /** Takes the last change back; nothing when there is none. */
  public Optional<Kept> undo(String who) {
    return undo(who, now -> {});
  }

  /** The same; who looks at what is there before may refuse by throwing. */
  public Optional<Kept> undo(String who, Consumer<Kept> look) {
    return moved(who, Kind.UNDO, look);
  }

  /** Puts the change that was undone last in again; nothing when there is none. */
  public Optional<Kept> redo(String who) {
    return redo(who, now -> {});
  }

  /** The same; who looks at what is there before may refuse by throwing. */
  public Optional<Kept> redo(String who, Consumer<Kept> look) {
    return moved(who, Kind.REDO, look);
  }

  private Optional<Kept> moved(String who, Kind kind, Consumer<Kept> look) {
    Optional<Kept> kept =
        database.write(
            handle -> {
              Kept now = locked(handle);
              look.accept(now);
              Optional<JournalLine> line =
                  kind == Kind.UNDO
                      ? JournalTable.lastDone(handle, studio.id())
                      : JournalTable.lastUndone(handle, studio.id());
              if (line.isEmpty()) {
                handle.rollback();
              }
              return line.map(found -> moved(handle, who, kind, now, found));
            });
    return kept.map(this::remembered);
  }

  private Kept moved(Handle handle, String who, Kind kind, Kept now, JournalLine line) {
    List<Difference> differences =
        JournalTable.differences(handle, studio.id(), line.number()).stream()
            .map(difference -> kind == Kind.UNDO ? difference.reversed() : difference)
            .toList();
    State state = kind == Kind.UNDO ? State.UNDONE : State.DONE;
    keeping.keepTheDay(handle, now);
    JournalTable.setState(handle, studio.id(), line.number(), state);
    OptionalLong of = OptionalLong.of(line.number());
    note(handle, new By(who, line.what()), kind, of, differences);
    return applied(handle, now, now.entries().with(differences), differences);
  }

  private Kept changed(Handle handle, By by, Kept now, Function<Kept, Entries> edit) {
    Entries after = edit.apply(now);
    List<Difference> differences = now.entries().differences(after);
    if (differences.isEmpty()) {
      handle.rollback();
      return now;
    }
    keeping.keepTheDay(handle, now);
    JournalTable.setState(handle, studio.id(), State.UNDONE, State.GONE);
    note(handle, by, Kind.CHANGE, OptionalLong.empty(), differences);
    return applied(handle, now, after, differences);
  }

  private Kept applied(Handle handle, Kept now, Entries after, List<Difference> differences) {
    Stand stand = StudioTable.arrive(handle, studio.id(), now.stand());
    Kept kept = new Kept(stand, after, book(after));
    EntryTable.apply(handle, studio.id(), differences);
    return kept;
  }

  private void note(
      Handle handle, By by, Kind kind, OptionalLong of, List<Difference> differences) {
    long number = JournalTable.nextNumber(handle, studio.id());
    JournalLine line =
        new JournalLine(number, clock.instant(), by.who(), by.what(), kind, of, State.DONE);
    JournalTable.add(handle, studio.id(), line, differences);
  }

  // Counting the revision up first keeps every other writer away until the transaction ends.
  private Kept locked(Handle handle) {
    Stand before = StudioTable.leave(handle, studio.id());
    Kept known = newest.get();
    if (known != null && known.stand().equals(before)) {
      return known;
    }
    Entries entries = EntryTable.all(handle, studio.id()).entries();
    return new Kept(before, entries, book(entries));
  }

  private Kept read(Handle handle) {
    EntryTable.Seen seen = EntryTable.all(handle, studio.id());
    return new Kept(seen.stand(), seen.entries(), book(seen.entries()));
  }

  /** Refuses what makes no valid book. */
  static void check(Entries entries) {
    book(entries);
  }

  private static Book book(Entries entries) {
    return BookParts.book(entries.parts(), new KeptMeshes(entries));
  }

  private Kept remembered(Kept kept) {
    newest.accumulateAndGet(
        kept, (known, seen) -> known == null || known.revision() < seen.revision() ? seen : known);
    return kept;
  }

  /**
   * The journal's lines, newest first.
   *
   * @param below lines with smaller numbers only; {@link Long#MAX_VALUE} for all
   * @param most how many at most
   */
  public List<JournalLine> journal(long below, int most) {
    return database.read(handle -> JournalTable.below(handle, studio.id(), below, most));
  }

  /** What a line of the journal changed, thing by thing; nothing for a line that is not there. */
  public List<Difference> journalDifferences(long number) {
    return database.read(handle -> JournalTable.differences(handle, studio.id(), number));
  }

  /** Keeps the studio as it is now. */
  public Snapshot takeSnapshot(String why) {
    Kept now = now();
    return database.write(handle -> keeping.take(handle, now, why));
  }

  /**
   * The same, once: asked again with the same key, it is the same snapshot.
   *
   * @return nothing when that was taken long ago and is not there any more
   * @throws KeyReused when the key stands for another request
   */
  public Optional<Snapshot> takeSnapshot(String why, Optional<Once> once) {
    if (once.isEmpty()) {
      return Optional.of(takeSnapshot(why));
    }
    Kept now = now();
    String id = database.write(handle -> keeping.take(handle, now, why, once.get()));
    return snapshots().stream().filter(snapshot -> snapshot.id().equals(id)).findFirst();
  }

  /** The snapshots there are, newest first. */
  public List<Snapshot> snapshots() {
    return database.read(handle -> SnapshotTable.all(handle, studio.id()));
  }

  /** Removes a snapshot; whether there was such a one. */
  public boolean removeSnapshot(String id) {
    return database.write(handle -> SnapshotTable.remove(handle, studio.id(), id));
  }

  /** The studio file of a snapshot. */
  public Optional<String> snapshotFile(String id) {
    return database.read(handle -> SnapshotTable.body(handle, studio.id(), id));
  }

  /**
   * Makes the studio what it was when a snapshot was taken: a change like any other, which can be
   * undone.
   *
   * @return nothing when there is no such snapshot
   */
  public Optional<Kept> restore(String who, String id) {
    return restore(who, id, now -> {});
  }

  /** The same; who looks at what is there before may refuse by throwing. */
  public Optional<Kept> restore(String who, String id, Consumer<Kept> look) {
    return snapshotFile(id)
        .map(
            file -> {
              Entries there = Entries.ofParts(StudioFile.parse(file));
              return change(
                  new By(who, "a snapshot put back"),
                  now -> {
                    look.accept(now);
                    return there;
                  });
            });
  }
}
