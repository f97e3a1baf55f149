package strickle.store;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.jdbi.v3.core.Handle;
import strickle.json.BookPart;

/** The studios of a database: one in a file, one or more on a server. */
public final class Studios {

  private final Database database;
  private final Clock clock;
  private final Map<String, StudioStore> open = new ConcurrentHashMap<>();

  /**
   * The studios of a database.
   *
   * @param clock says when changes happen
   */
  public Studios(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** All of them by name. */
  public List<StudioName> all() {
    return database.read(StudioTable::all);
  }

  /**
   * Makes a studio.
   *
   * @param name by which it is opened; none may have it already
   * @param passwordHash of the password that opens it; nothing for none
   * @param parts what it holds at first; they must make a valid book
   * @throws strickle.book.Faulty when they do not
   * @throws IllegalArgumentException when there is a studio of this name
   */
  public StudioStore create(String name, Optional<String> passwordHash, List<BookPart> parts) {
    return made(name, passwordHash, parts, other -> other.name().equals(name))
        .orElseThrow(
            () -> new IllegalArgumentException("There is a studio named " + name + " already."));
  }

  /**
   * Makes the first studio, which opens without a password; of many who try at once one does.
   *
   * @param parts what it holds at first; they must make a valid book
   * @return nothing when there is any studio already
   * @throws strickle.book.Faulty when they do not
   */
  public Optional<StudioStore> createFirst(String name, List<BookPart> parts) {
    return made(name, Optional.empty(), parts, any -> true);
  }

  private Optional<StudioStore> made(
      String name, Optional<String> hash, List<BookPart> parts, Predicate<StudioName> inTheWay) {
    StudioName studio = new StudioName(UUID.randomUUID().toString(), name);
    Entries entries = Entries.ofParts(parts);
    StudioStore.check(entries);
    boolean there =
        database.write(
            handle -> {
              holdAll(handle);
              if (StudioTable.all(handle).stream().anyMatch(inTheWay)) {
                return false;
              }
              StudioTable.create(handle, studio, hash, clock.instant());
              EntryTable.apply(handle, studio.id(), Entries.NONE.differences(entries));
              return true;
            });
    return there ? Optional.of(of(studio)) : Optional.empty();
  }

  // A file has one writer at a time; on a server a studio made meanwhile would not be seen.
  private void holdAll(Handle handle) {
    if (!database.isOnesOwn()) {
      StudioTable.holdAll(handle);
    }
  }

  /** A studio by its name; nothing when there is none. */
  public Optional<StudioStore> named(String name) {
    return all().stream().filter(studio -> studio.name().equals(name)).findFirst().map(this::of);
  }

  /** A studio by its id; nothing when there is none. */
  public Optional<StudioStore> withId(String id) {
    StudioStore known = open.get(id);
    return known != null
        ? Optional.of(known)
        : all().stream().filter(studio -> studio.id().equals(id)).findFirst().map(this::of);
  }

  /** The hash of the password that opens a studio; nothing when none is needed. */
  public Optional<String> passwordHash(String id) {
    return database.read(handle -> StudioTable.passwordHash(handle, id));
  }

  /**
   * Sets the password that opens a studio; nothing for none. Whoever has it open must open it anew.
   */
  public void setPasswordHash(String id, Optional<String> hash) {
    database.write(
        handle -> {
          StudioTable.setPasswordHash(handle, id, hash);
          SessionTable.removeAllOf(handle, id);
          return id;
        });
  }

  /** The only studio, if there is one and it opens without a password. */
  public Optional<StudioStore> onlyWithoutPassword() {
    return database.read(StudioTable::onlyWithoutPassword).map(this::of);
  }

  /** Those that open without a password, by name. */
  public List<StudioName> withoutPassword() {
    return all().stream().filter(studio -> passwordHash(studio.id()).isEmpty()).toList();
  }

  /** Keeps that a studio is open for whoever shows a token, of which only the hash is kept. */
  public void openSession(String studio, String tokenHash, Instant endsAt) {
    Instant now = clock.instant();
    database.write(
        handle -> {
          SessionTable.removeEnded(handle, studio, now);
          SessionTable.add(handle, studio, tokenHash, now, endsAt);
          return studio;
        });
  }

  /** What a token opens; nothing when it is none or has ended. */
  public Optional<Session> session(String tokenHash) {
    return database
        .read(handle -> SessionTable.find(handle, tokenHash))
        .filter(session -> session.endsAt().isAfter(clock.instant()));
  }

  /** Ends a session. */
  public void closeSession(String tokenHash) {
    database.write(
        handle -> {
          SessionTable.remove(handle, tokenHash);
          return tokenHash;
        });
  }

  /**
   * Sets the secret under which a calendar program reads a studio's plan; the one before ends.
   *
   * @param secretHash of the secret; nothing for none
   */
  public void setCalendarSecret(String studio, Optional<String> secretHash) {
    database.write(
        handle -> {
          secretHash.ifPresentOrElse(
              hash -> CalendarTable.set(handle, studio, hash, clock.instant()),
              () -> CalendarTable.remove(handle, studio));
          return studio;
        });
  }

  /** Since when a studio's plan can be read by a secret; nothing when it cannot. */
  public Optional<Instant> calendarSecretSince(String studio) {
    return database.read(handle -> CalendarTable.since(handle, studio));
  }

  /** The studio whose plan a secret shows; nothing when it is none. */
  public Optional<StudioStore> ofCalendarSecret(String secretHash) {
    return database.read(handle -> CalendarTable.studio(handle, secretHash)).flatMap(this::withId);
  }

  private StudioStore of(StudioName studio) {
    return open.computeIfAbsent(studio.id(), id -> new StudioStore(database, studio, clock));
  }
}
