package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BoundCommandTest {

  @TempDir Path folder;
  private Path book;
  private Path plan;

  @BeforeEach
  void planTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
    plan = folder.resolve("plan.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "50", "--out", plan).done();
  }

  @Test
  void everyOrderAndTheWholeAreTold() {
    String out = Shell.run("bound", book, "--from", "2027-04-05").done().out();
    assertTrue(out.startsWith("Kiln Lane Castings: what no plan from Mon 5 Apr 2027 00:00"), out);
    assertTrue(out.contains("\n  O-104  Sat 24 Apr 2027 17:00  "), out);
    assertTrue(out.contains("\n  late hours  0\n"), out);
    assertTrue(out.contains("\n  handwork    "), out);
    out.lines().forEach(line -> assertTrue(line.length() <= Lines.WIDEST, line));
  }

  @Test
  void aPlanIsHeldAgainstIt() {
    String out = Shell.run("bound", book, "--plan", plan).done().out();
    String best = "late hours  0; the plan has 0: nothing more to win by planning longer\n";
    assertTrue(out.contains(best), out);
    assertTrue(out.contains("handwork    4 h 20 min; the plan has 4 h 20 min: nothing"), out);
  }

  @Test
  void theJsonSaysTheSame() {
    String out = Shell.run("bound", book, "--plan", plan, "--json").done().out();
    for (String part :
        List.of(
            "\"format\": \"strickle-bound/1\"",
            "\"from\": \"2027-04-05T00:00-05:00\"",
            "\"order\": \"O-104\"",
            "\"plannedAlone\"",
            "\"attendedMinutes\": 260",
            "\"attendedMinutesAbove\": 0",
            "\"weightedLateHoursAbove\": 0")) {
      assertTrue(out.contains(part), part + " in " + out);
    }
  }

  @Test
  void aPlanHasABeginningAndACoverOfItsOwn() {
    Shell.Result both =
        Shell.run("bound", book, "--plan", plan, "--from", "2027-04-05", "--cover", "90");
    assertEquals(Outcome.WRONG, both.code());
    assertEquals(List.of("--from", "--cover"), both.paths());
  }

  @Test
  void aBookThatCannotBePlannedIsRefused() {
    book =
        Shell.file(
            folder,
            "book.json",
            Shell.example("\"batchLimitGrams\": 9000", "\"batchLimitGrams\": 900"));
    Shell.Result refused = Shell.run("bound", book, "--from", "2027-04-05");
    assertEquals(Outcome.WRONG, refused.code());
    assertEquals(List.of("$.pieces[0].mould"), refused.paths());
  }
}
