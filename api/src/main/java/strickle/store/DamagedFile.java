package strickle.store;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jdbi.v3.core.Handle;

/** Finds out that a studio's file is damaged before anything is done to it, and says what helps. */
final class DamagedFile {

  private static final String SOUND = "ok";

  private DamagedFile() {}

  /** Refuses a file that SQLite does not find whole. */
  static void refuse(Handle handle) {
    String found = handle.createQuery("pragma quick_check(1)").mapTo(String.class).first();
    if (!found.equals(SOUND)) {
      throw new StoreTrouble(StoreTrouble.Kind.CORRUPT, found, null);
    }
  }

  /**
   * Trouble with the file in a folder, with where it is and the copy that could replace it.
   *
   * @param today what day it is (UTC): a copy that is dated later is no new one
   */
  static StoreTrouble told(Path folder, StoreTrouble trouble, LocalDate today) {
    if (trouble.kind() == StoreTrouble.Kind.LOCKED) {
      return trouble;
    }
    String where = "the file is " + folder.resolve(SqliteFile.NAME);
    String copy =
        trouble.kind() == StoreTrouble.Kind.CORRUPT
            ? DailyCopies.newest(folder, today)
                .map(file -> ", the newest copy " + file)
                .orElse(", there is no copy")
            : "";
    String said = trouble.getCause() == null ? "" : ": " + trouble.getCause().getMessage();
    // A file is never out of reach; whatever cannot be told more closely lies with the device.
    StoreTrouble.Kind kind =
        trouble.kind() == StoreTrouble.Kind.UNREACHABLE ? StoreTrouble.Kind.DEVICE : trouble.kind();
    return new StoreTrouble(kind, where + copy + said, trouble);
  }
}
