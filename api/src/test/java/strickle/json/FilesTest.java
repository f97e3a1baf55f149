package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Fault;
import strickle.book.Faulty;

class FilesTest {

  // Far above what is needed on a slow machine, far below what reading without limits would take.
  private static final Duration QUICKLY = Duration.ofSeconds(20);

  @TempDir Path folder;

  @Test
  void missingFilesAreRefused() {
    Path file = folder.resolve("none.json");
    assertEquals(
        List.of(
            new Fault("$", "no file " + Shown.text(file.toString()), "the path of a studio book")),
        faults(file));
  }

  @Test
  void foldersAreRefused() {
    assertEquals(
        List.of(
            new Fault(
                "$", "the folder " + Shown.text(folder.toString()), "the path of a studio book")),
        faults(folder));
  }

  @Test
  void filesThatCannotBeReadAreRefused() {
    // Where the system has it, the one file that exists and refuses to be read to everybody.
    Path file = Path.of("/proc/self/mem");
    assumeTrue(Files.exists(file));
    assertEquals(
        List.of(
            new Fault(
                "$",
                "the file \"/proc/self/mem\", which cannot be read",
                "a file that may be read")),
        faults(file));
  }

  @Test
  void filesAboveTheLimitAreRefusedUnreadWithSizeAndLimit() throws Exception {
    Path file = folder.resolve("large.json");
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(3L * 1024 * 1024 * 1024);
    }
    List<Fault> faults = assertTimeout(QUICKLY, () -> faults(file));
    assertEquals(List.of(new Fault("$", "a file of 3072 MB", "at most 8 MB")), faults);
  }

  @Test
  void textsAndBytesAboveTheLimitAreRefused() {
    String large = " ".repeat(Limits.FILE_BYTES + 1);
    List<Fault> expected = List.of(new Fault("$", "a file of 8.1 MB", "at most 8 MB"));
    assertEquals(expected, ExampleBook.faults(large));
    assertEquals(
        expected,
        assertThrows(
                Faulty.class,
                () -> BookFile.parse(new byte[Limits.FILE_BYTES + 1], Meshes.in(folder)))
            .faults());
  }

  @Test
  void sizesAreToldInWords() {
    assertEquals("12 bytes", Limits.megabytes(12));
    assertEquals("8.1 MB", Limits.megabytes(Limits.FILE_BYTES + 1));
    assertEquals("8 MB", Limits.megabytes(Limits.FILE_BYTES));
  }

  @Test
  @Tag("slow")
  void deepFilesAreRefusedQuickly() {
    String deep = "[".repeat(Limits.FILE_BYTES);
    assertTimeout(QUICKLY, () -> assertEquals(1, ExampleBook.faults(deep).size()));
    String deepObjects = "{\"a\":".repeat(Limits.FILE_BYTES / 5);
    assertTimeout(QUICKLY, () -> assertEquals(1, ExampleBook.faults(deepObjects).size()));
  }

  @Test
  @Tag("slow")
  void fullFilesOfSmallThingsAreRefusedQuickly() {
    refusedQuickly("{\"pins\": [", "1,", "1]}");
    refusedQuickly("{\"pins\": [", "{},", "{}]}");
    refusedQuickly("{\"people\": [{\"hours\": {\"MON\": [", "[1],", "1]}}]}");
    refusedQuickly("{\"x\": [", "\"\",", "1]}");
    refusedQuickly("{", "\"a\":1,", "\"a\":1}");
    refusedQuickly("{\"x\": \"", "\\u0041", "\"}");
    refusedQuickly("{\"x\": -1.", "0", "}");
  }

  @Test
  @Tag("slow")
  void fullFilesOfDifferentUnknownFieldsAreRefusedQuickly() {
    StringBuilder json = new StringBuilder("{");
    for (int i = 0; json.length() < Limits.FILE_BYTES - 100; i++) {
      json.append("\"forms").append(i).append("\":1,");
    }
    String whole = json.append("\"x\":1}").toString();
    assertTimeout(QUICKLY, () -> assertEquals(Limits.FAULTS, ExampleBook.faults(whole).size()));
  }

  private static void refusedQuickly(String start, String each, String end) {
    int times = (Limits.FILE_BYTES - start.length() - end.length()) / each.length();
    String json = start + each.repeat(times) + end;
    assertTimeout(QUICKLY, () -> ExampleBook.faults(json), start);
  }

  private static List<Fault> faults(Path file) {
    return assertThrows(Faulty.class, () -> BookFile.read(file)).faults();
  }
}
