package strickle.store;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
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

  /** The snapshots of a studio, by its id. */
  SnapshotKeeping(String studio, Clock clock) {
    this.studio = studio;
    this.clock = clock;
  }

  /** Keeps it as it is now, unless that was done today (UTC) already. */
  void keepTheDay(Handle handle, Kept now) {
    LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    if (SnapshotTable.isAnyOf(handle, studio, today)) {
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

  /** Keeps it as it is now. */
  Snapshot take(Handle handle, Kept now, String why) {
    Snapshot snapshot = new Snapshot(UUID.randomUUID().toString(), clock.instant(), why);
    SnapshotTable.add(handle, studio, snapshot, StudioFile.write(now.entries().parts()));
    return snapshot;
  }
}
