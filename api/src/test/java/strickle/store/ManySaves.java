package strickle.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.logging.LogManager;
import java.util.stream.Stream;

/**
 * Changes copies of a studio, one after the other, each on a disk of which another reading or
 * writing fails, until a save needs no more of them. A process of its own, so that a library can
 * stand between it and the system.
 */
final class ManySaves {

  /** How many there may be at most. */
  static final int MOST = 1000;

  private ManySaves() {}

  /**
   * Changes them.
   *
   * @param arguments the folder of the first studio; where its copies go; what the library reads;
   *     what it writes; whether later ones fail too (0 or 1)
   */
  public static void main(String[] arguments) throws Exception {
    LogManager.getLogManager().reset();
    Path copies = Path.of(arguments[1]);
    Path saving = Path.of(arguments[2]);
    Path count = Path.of(arguments[3]);
    boolean reached = true;
    for (int n = 1; reached && n <= MOST; n++) {
      Path data = copies.resolve("data" + n);
      copy(Path.of(arguments[0]), data);
      Files.deleteIfExists(count);
      String end = saved(data, saving, n + " " + arguments[4]) ? "saved" : "refused";
      reached = Files.exists(count) && Integer.parseInt(Files.readString(count).strip()) >= n;
      System.out.println(n + " " + (reached ? end : "none"));
    }
    System.exit(0);
  }

  private static boolean saved(Path data, Path saving, String failing) throws IOException {
    try (Database database = Database.inFolder(data)) {
      StudioStore studio = new Studios(database, Clock.systemUTC()).named("Ash Lane").orElseThrow();
      studio.now();
      Files.writeString(saving, failing);
      studio.change(
          new By("maren", "a rack"),
          now -> now.entries().with("stations", "rack-9", FailingDiskTest.RACK));
      return true;
    } catch (StoreTrouble told) {
      return false;
    } finally {
      Files.deleteIfExists(saving);
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.sorted(Comparator.naturalOrder()).toList()) {
        Path copy = to.resolve(from.relativize(file));
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
  }

  /** The class path of this, for a process of it. */
  static List<String> words() {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "--enable-native-access=ALL-UNNAMED",
        "-cp",
        System.getProperty("java.class.path"),
        ManySaves.class.getName());
  }
}
