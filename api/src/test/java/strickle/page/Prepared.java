package strickle.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo's studio with a plan in use, laid out once and copied for every test that begins so. */
final class Prepared {

  private static Path kept;

  private Prepared() {}

  /** Copies it into an empty folder. */
  static synchronized void into(Path folder) {
    try {
      if (kept == null) {
        kept = made(Files.createTempDirectory("strickle-page"));
      }
      for (Path file : filesOf(kept)) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private static Path made(Path folder) throws IOException {
    try (StudioHouse house = StudioHouse.demo(folder)) {
      house.workByAPlan();
    }
    folder.toFile().deleteOnExit();
    for (Path file : filesOf(folder)) {
      file.toFile().deleteOnExit(); // in the reverse of this order: the files before their folder
    }
    return folder;
  }

  /** Its files; copies of days, which lie in a folder of their own, are not needed. */
  private static List<Path> filesOf(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }
}
