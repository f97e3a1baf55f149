package strickle.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.logging.LogManager;

/** Changes a studio once and ends: what a disk that fails is tried on. */
final class OneSave {

  static final int SAVED = 0;
  static final int REFUSED = 3;

  private OneSave() {}

  /**
   * Puts a station in.
   *
   * @param arguments the folder, and the file that is there while it saves
   */
  public static void main(String[] arguments) throws Exception {
    LogManager.getLogManager().reset();
    Path saving = Path.of(arguments[1]);
    int code = REFUSED;
    try (Database database = Database.inFolder(Path.of(arguments[0]))) {
      StudioStore studio = new Studios(database, Clock.systemUTC()).named("Ash Lane").orElseThrow();
      studio.now();
      Files.createFile(saving);
      studio.change(
          new By("maren", "a rack"),
          now -> now.entries().with("stations", "rack-9", FailingDiskTest.RACK));
      code = SAVED;
    } catch (StoreTrouble told) {
      System.out.println(told.getMessage());
    } finally {
      Files.deleteIfExists(saving);
    }
    System.exit(code);
  }
}
