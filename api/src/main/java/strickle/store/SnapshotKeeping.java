package strickle.store;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import strickle.json.StudioFile;

/** Keeps a studio as it is: whenever that is asked for, and before the first change of each day. */
final class SnapshotKeeping {

  /** How many daily snapshots are kept. */
  private static final int DAILY_KEPT = 30;

  private static final String DAILY = "the day's first change";

  private final String studio;
  private final Clock clock;
  private final Creations creations;

  /** The snapshots of a studio, by its id. */
  SnapshotKeeping(String studio, Clock clock, Creations creations) {
    this.studio = studio;
    this.clock = clock;
    this.creations = creations;
  }

  /**
   * Keeps it as it is now, unless that was done today (UTC) already. Of a day on which something
   * has been changed it was: whoever has removed that snapshot does not get another in its place.
   */
  void keepTheDay(Handle handle, Kept now) {
    LocalDate today = day(clock.instant());
    if (SnapshotTable.isAnyOf(handle, studio, today) || isChangedOn(handle, today)) {
      return;
    }
    Instant taken = take(handle, now, DAILY).at();
    // What a clock that went wrong has dated in the future takes no place of those of today.
    SnapshotTable.all(handle, studio).stream()
        .filter(kept -> !kept.at().isAfter(taken))
        .filter(kept -> kept.why().equals(DAILY))
        .skip(DAILY_KEPT)
        .forEach(old -> SnapshotTable.remove(handle, studio, old.id()));
  }

  private boolean isChangedOn(Handle handle, LocalDate day) {
    return JournalTable.below(handle, studio, Long.MAX_VALUE, 1).stream()
        .anyMatch(newest -> day(newest.at()).equals(day));
  }

  private static LocalDate day(Instant moment) {
    return LocalDate.ofInstant(moment, ZoneOffset.UTC);
  }

  /**
   * Keeps it as it is now, once.
   *
   * @return the id of the snapshot, also of one that was taken with this key before
   * @throws KeyReused when the key stands for another request
   */
  String take(Handle handle, Kept now, String why, Once once) {
    StudioTable.hold(handle, studio);
    Optional<String> before = creations.replied(handle, once);
    if (before.isPresent()) {
      return before.get();
    }
    String id = take(handle, now, why).id();
    creations.remember(handle, once, id);
    return id;
  }

  /** Keeps it as it is now. */
  Snapshot take(Handle handle, Kept now, String why) {
    Snapshot snapshot = new Snapshot(UUID.randomUUID().toString(), clock.instant(), why);
    SnapshotTable.add(handle, studio, snapshot, StudioFile.write(now.entries().parts()));
    return snapshot;
  }
}
