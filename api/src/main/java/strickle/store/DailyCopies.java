package strickle.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps a whole copy of a studio's file for each day on which the service started or something was
 * to be changed, as it was before: the last fourteen of them. A server's database has copies of its
 * own; there it does nothing.
 */
public final class DailyCopies {

  private static final Logger LOG = LoggerFactory.getLogger(DailyCopies.class);
  private static final String FOLDER = "snapshots";
  private static final String NAME = "strickle-[0-9]{4}-[0-9]{2}-[0-9]{2}\\.db";
  private static final int KEPT = 14;

  private final Database database;
  private final Clock clock;
  private final AtomicReference<LocalDate> done = new AtomicReference<>();

  /**
   * The copies of a database.
   *
   * @param clock says what day it is (UTC)
   */
  public DailyCopies(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** Keeps the copy of today if there is none yet. Trouble with it is logged and stops nothing. */
  public void keep() {
    LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    if (today.equals(done.getAndSet(today)) || database.folder().isEmpty()) {
      return;
    }
    try {
      keep(database.folder().get().resolve(FOLDER), today);
    } catch (IOException cannot) {
      LOG.warn("the day's copy could not be kept: {}", cannot.getClass().getSimpleName());
    } catch (StoreTrouble trouble) {
      LOG.warn("the day's copy could not be kept: {}", trouble.kind());
    }
  }

  private void keep(Path folder, LocalDate today) throws IOException {
    Path copy = of(folder, today);
    if (Files.exists(copy)) {
      return;
    }
    Files.createDirectories(folder);
    Path begun = folder.resolve("begun.db");
    Files.deleteIfExists(begun);
    database.copyTo(begun);
    try (FileChannel file = FileChannel.open(begun, StandardOpenOption.WRITE)) {
      file.force(true); // SQLite leaves that to us
    }
    Files.move(begun, copy, StandardCopyOption.ATOMIC_MOVE);
    // What a clock that went wrong has dated in the future takes no place of those up to today.
    for (Path old : upTo(folder, today).stream().skip(KEPT).toList()) {
      Files.deleteIfExists(old);
    }
  }

  /**
   * The newest copy of the file in a folder. One that a clock that went wrong has dated in the
   * future is older than it says, so it is named only where there is no other.
   *
   * @param today what day it is (UTC)
   */
  static Optional<Path> newest(Path dataFolder, LocalDate today) {
    Path folder = dataFolder.resolve(FOLDER);
    try {
      return Stream.concat(upTo(folder, today).stream(), all(folder).stream()).findFirst();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static Path of(Path folder, LocalDate day) {
    return folder.resolve("strickle-" + day + ".db");
  }

  private static List<Path> upTo(Path folder, LocalDate day) throws IOException {
    Path last = of(folder, day);
    return all(folder).stream().filter(one -> one.compareTo(last) <= 0).toList();
  }

  // Newest first.
  private static List<Path> all(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().matches(NAME))
          .sorted(Comparator.reverseOrder())
          .toList();
    }
  }
}
