package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;

/** Whichever write of a save fails, the studio is what it was before it or after it. */
@Tag("long")
class FailingDiskTest {

  static final String RACK = "{\"id\":\"rack-9\",\"name\":\"rack\",\"places\":4}";

  private static final int MOST = 200;

  @TempDir Path folder;

  private Entries before;
  private Entries after;

  @Test
  void everyWriteThatFailsOnceLeavesTheOldStudioOrTheNew() throws Exception {
    everyWrite(Map.of());
  }

  @Test
  void everyWriteFromWhichOnTheDiskIsGoneLeavesTheOldStudioOrTheNew() throws Exception {
    everyWrite(Map.of("FAIL_ALSO", "1"));
  }

  private void everyWrite(Map<String, String> more) throws Exception {
    Path shim = compiled();
    begin();
    int saved = 0;
    int n = 1;
    for (boolean reached = true; reached; n++) {
      assertTrue(n < MOST, "a save has so many writes?");
      Path data = Files.createDirectory(folder.resolve("data" + n));
      copy(folder.resolve("first"), data);
      int code = save(shim, data, n, more);
      assertTrue(code == OneSave.SAVED || code == OneSave.REFUSED, "ended with " + code);
      Entries found = entries(data);
      assertTrue(found.equals(before) || found.equals(after), "another state after write " + n);
      if (code == OneSave.SAVED) {
        saved++;
        assertEquals(after, found, "what was acknowledged is gone after write " + n);
      }
      Path count = folder.resolve("count" + n);
      reached = Files.exists(count) && Integer.parseInt(Files.readString(count).strip()) >= n;
    }
    System.out.println((n - 2) + " writes of a save failed one by one; saved in spite of " + saved);
    assertTrue(n > 4, "only " + n);
  }

  private void begin() throws IOException {
    Path first = folder.resolve("first");
    try (Database database = Database.inFolder(first)) {
      StudioStore studio =
          new Studios(database, Clock.systemUTC())
              .create("Ash Lane", Optional.empty(), BookParts.of(Demo.book(Size.SMALL)));
      before = studio.now().entries();
      after = before.with("stations", "rack-9", RACK);
    }
  }

  private int save(Path shim, Path data, int n, Map<String, String> more) throws Exception {
    Path saving = folder.resolve("saving" + n);
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "--enable-native-access=ALL-UNNAMED",
            "-cp",
            System.getProperty("java.class.path"),
            OneSave.class.getName(),
            data.toString(),
            saving.toString());
    builder.environment().put("LD_PRELOAD", shim.toString());
    builder.environment().put("FAIL_UNDER", data.toString());
    builder.environment().put("FAIL_AT", Integer.toString(n));
    builder.environment().put("FAIL_WHILE", saving.toString());
    builder.environment().put("FAIL_COUNT", folder.resolve("count" + n).toString());
    builder.environment().putAll(more);
    return builder.inheritIO().start().waitFor();
  }

  private static Entries entries(Path data) {
    try (Database database = Database.inFolder(data)) {
      return new Studios(database, Clock.systemUTC())
          .named("Ash Lane")
          .orElseThrow()
          .now()
          .entries();
    }
  }

  private Path compiled() throws Exception {
    Path source = folder.resolve("failing-disk.c");
    try (InputStream in = FailingDiskTest.class.getResourceAsStream("failing-disk.c")) {
      Files.copy(in, source, StandardCopyOption.REPLACE_EXISTING);
    }
    Path shim = folder.resolve("failing-disk.so");
    List<String> compiler =
        List.of("cc", "-shared", "-fPIC", "-o", shim.toString(), source.toString(), "-ldl");
    try {
      assertEquals(0, new ProcessBuilder(compiler).inheritIO().start().waitFor());
    } catch (IOException none) {
      assumeTrue(false, "there is no C compiler");
    }
    return shim;
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.sorted(Comparator.naturalOrder()).toList()) {
        if (Files.isRegularFile(file)) {
          Files.copy(file, to.resolve(from.relativize(file)));
        }
      }
    }
  }
}
