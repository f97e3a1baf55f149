package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookParts;

/**
 * Whichever reading or writing of a save fails, the studio is what it was before it or after it.
 */
@Tag("long")
class FailingDiskTest {

  static final String RACK = "{\"id\":\"rack-9\",\"name\":\"rack\",\"places\":4}";

  private static final int FEWEST = 10;

  @TempDir Path folder;

  private Entries before;
  private Entries after;

  @Test
  void everyReadingOrWritingThatFailsOnceLeavesTheOldStudioOrTheNew() throws Exception {
    every("0");
  }

  @Test
  void everyOneFromWhichOnTheDiskIsGoneLeavesTheOldStudioOrTheNew() throws Exception {
    every("1");
  }

  private void every(String laterToo) throws Exception {
    begin();
    int failed = 0;
    int saved = 0;
    for (String line : saves(compiled(), laterToo)) {
      String[] told = line.split(" ", -1);
      Entries found = entries(folder.resolve("copies").resolve("data" + told[0]));
      assertTrue(found.equals(before) || found.equals(after), "another state after " + line);
      if (told[1].equals("saved")) {
        saved++;
        assertEquals(after, found, "what was acknowledged is gone after " + line);
      }
      failed += told[1].equals("none") ? 0 : 1;
    }
    System.out.println(
        failed + " readings and writings of a save failed one by one; saved in spite of " + saved);
    assertTrue(failed >= FEWEST && failed < ManySaves.MOST, failed + " failed");
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

  /** What became of each: its number, and "saved", "refused", or "none" when there is no such. */
  private List<String> saves(Path library, String laterToo) throws Exception {
    Path copies = Files.createDirectory(folder.resolve("copies"));
    Path saving = folder.resolve("saving");
    Path count = folder.resolve("count");
    List<String> words = new ArrayList<>(ManySaves.words());
    words.addAll(List.of(folder.resolve("first").toString(), copies.toString()));
    words.addAll(List.of(saving.toString(), count.toString(), laterToo));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.environment().put("LD_PRELOAD", library.toString());
    builder.environment().put("FAIL_UNDER", copies.toString());
    builder.environment().put("FAIL_WHILE", saving.toString());
    builder.environment().put("FAIL_COUNT", count.toString());
    Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    List<String> lines = process.inputReader(StandardCharsets.UTF_8).lines().toList();
    assertEquals(0, process.waitFor(), lines.toString());
    return lines;
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
}
