package strickle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules that are kept in the source folders and leave no trace in the classes. */
class SourceTest {

  private static final int MOST_LINES = 300;

  /** What is put into another language as one file: no code to be read in one sitting. */
  private static final Path WORDS = Path.of("strickle", "web", "words");

  private static final List<String> MODULES = List.of("solver", "web", "demo-data", "api");

  @Test
  void everyPackageSaysWhoLivesThere() {
    List<Path> silent =
        sources("src/main/java", ".java")
            .map(Path::getParent)
            .distinct()
            .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
            .toList();
    assertEquals(List.of(), silent, "packages without a package-info.java");
  }

  @Test
  void noSourceFileIsTooLongToReadInOneSitting() {
    List<Path> tooLong =
        Stream.of(".java", ".js", ".css")
            .flatMap(ending -> sources("src", ending))
            .filter(file -> !file.getParent().endsWith(WORDS))
            .filter(file -> lines(file) > MOST_LINES)
            .toList();
    assertEquals(List.of(), tooLong, "files over " + MOST_LINES + " lines");
  }

  @Test
  void theSourcesAreFound() {
    assertTrue(sources("src/main/java", ".java").count() > 10);
  }

  private static Stream<Path> sources(String folder, String ending) {
    return MODULES.stream()
        .map(module -> root().resolve(module).resolve(folder))
        .filter(Files::isDirectory)
        .flatMap(SourceTest::walk)
        .filter(file -> file.toString().endsWith(ending));
  }

  private static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(folder.resolve("solver"))) {
      folder = folder.getParent();
    }
    return folder;
  }

  private static Stream<Path> walk(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static long lines(Path file) {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
