package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Books that cannot be used: exit code 2, nothing on standard output, one line for each fault. */
class FaultyBooksTest {

  private static final int FIFTY_MEGABYTES = 50 * 1024 * 1024;

  /** Far above what is needed on a slow machine, far below what planning would take. */
  private static final Duration QUICKLY = Duration.ofSeconds(20);

  @TempDir Path folder;

  @Test
  void aMissingFileIsNamed() {
    refused("$: found no file", folder.resolve("none.json"));
  }

  @Test
  void aFolderIsNoBook() {
    refused("$: found the folder", folder);
  }

  @Test
  void anEmptyFileIsNoBook() {
    refused("$: found an empty file", book(""));
  }

  @Test
  void brokenJsonIsToldWithItsLine() {
    Shell.Result result =
        refused("$: found", book(Shell.example("\"forms\": [\n", "\"forms\": [[\n")));
    assertTrue(result.err().contains("line"), result.err());
  }

  @Test
  void anUnknownFieldIsToldWithItsPath() {
    String more = "\"wagePerHuor\": 1, \"wagePerHour\"";
    refused("$.studio.wagePerHuor", book(Shell.example("\"wagePerHour\"", more)));
  }

  @Test
  void aNegativeTimeIsToldWithItsPath() {
    refused(
        "$.moulds[0].prepMinutes: found -6",
        book(Shell.example("\"prepMinutes\": 6", "\"prepMinutes\": -6")));
  }

  @Test
  void aNameThatLeadsNowhereIsToldWithItsPath() {
    refused(
        "$.pieces[0].mould: found \"planter-dep\"",
        book(Shell.example("\"mould\": \"planter-deep\"", "\"mould\": \"planter-dep\"")));
  }

  @Test
  void aCastingHeavierThanTheBatchLimitIsToldWithItsPath() {
    refused(
        "$.pieces[0].mould: found 2494",
        book(Shell.example("\"batchLimitGrams\": 9000", "\"batchLimitGrams\": 2000")));
  }

  @Test
  void aPinThatCannotBeKeptIsToldWithItsPath() {
    String pin =
        "\"pins\": [{\"kind\": \"pour\", \"piece\": \"planter-slate\", \"castings\": 1,"
            + " \"start\": \"2027-04-07T09:30\", \"person\": \"ana\"}]";
    refused("$.pins[0].start: found", book(Shell.example("\"pins\": []", pin)));
  }

  @Test
  void aFileOfFiftyMegabytesIsRefusedAtOnce() throws IOException {
    Path large = folder.resolve("large.json");
    try (RandomAccessFile sparse = new RandomAccessFile(large.toFile(), "rw")) {
      sparse.setLength(FIFTY_MEGABYTES);
    }
    assertTimeout(QUICKLY, () -> refused("$: found a file of 50 MB", large));
  }

  @Test
  void allFaultsAreToldAtOnceEachOnALineOfItsOwn() {
    String json = Shell.example("\"prepMinutes\": 6", "\"prepMinutes\": -6");
    json = json.replace("\"goodPercent\": 92", "\"goodPercent\": 192");
    Shell.Result result = Shell.run("check", book(json));
    assertEquals(2, result.code());
    assertEquals(List.of("$.moulds[0].prepMinutes", "$.pieces[0].goodPercent"), result.paths());
  }

  @Test
  void everyFaultSaysWhatWasFoundAndWhatWouldBeRight() {
    Path book = book(Shell.example("\"cavities\": 1", "\"cavities\": 0"));
    assertEquals(
        "$.moulds[0].cavities: found 0; right would be a whole number from 1 to 1000\n",
        Shell.run("plan", book).err().replace("\r\n", "\n"));
  }

  @Test
  void aBookThatCannotBePlannedCanStillBePriced() {
    Path book = book(Shell.example("\"batchLimitGrams\": 9000", "\"batchLimitGrams\": 2000"));
    Shell.run("price", book).done();
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "price", "check"})
  void everyCommandRefusesAFileThatIsNoBook(String command) {
    Shell.Result result = Shell.run(command, book("[1, 2]"));
    assertEquals(2, result.code());
    assertEquals("", result.out());
    assertEquals(1, result.faults().size(), result.err());
  }

  private Path book(String json) {
    return Shell.file(folder, "book.json", json);
  }

  /** Refused alike by plan and check, with one fault that begins like this. */
  private static Shell.Result refused(String start, Path book) {
    Shell.Result plan = Shell.run("plan", book, "--from", "2027-04-05");
    assertEquals(2, plan.code());
    assertEquals("", plan.out());
    assertEquals(1, plan.faults().size(), plan.err());
    assertTrue(plan.err().startsWith(start), plan.err());
    assertTrue(plan.err().contains("; right would be "), plan.err());
    assertEquals(plan, Shell.run("check", book, "--from", "2027-04-05"));
    return plan;
  }
}
