package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** The example's week, carried out: every demould takes 11 minutes in place of 8. */
class LearnCommandTest {

  private static final int EARLIER = 3;

  @TempDir Path folder;
  private Path file;
  private Path week;
  private Plan plan;

  @BeforeEach
  void planTheExample() {
    file = Shell.file(folder, "book.json", Shell.example());
    week = folder.resolve("week.json");
    Shell.run("plan", file, "--from", "2027-04-05", "--schedules", "50", "--out", week).done();
    plan = PlanFile.read(week);
  }

  private Path log(double gramsFactor, int scrapped) {
    List<String> happened = new ArrayList<>();
    for (Task task : plan.tasks()) {
      happened.add(record(task));
    }
    String first = plan.lots().get(0).runs().get(0).id();
    if (scrapped > 0) {
      happened.add(
          "{\"kind\": \"scrapped\", \"run\": \"" + first + "\", \"pieces\": " + scrapped + "}");
    }
    List<String> used = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      double grams = lot.weighOut().get(0).grams() * gramsFactor;
      used.add(
          String.format(
              Locale.ROOT,
              "{\"lot\": \"%s\", \"material\": \"white-blend\", \"quantity\": %.3f}",
              lot.id(),
              grams));
    }
    String json =
        "{\"format\": \"strickle-progress/1\", \"happened\": ["
            + String.join(",", happened)
            + "], \"used\": ["
            + String.join(",", used)
            + "]}";
    return Shell.file(folder, "done.json", json);
  }

  private static String record(Task task) {
    LocalDateTime end = task.end().toLocalDateTime();
    LocalDateTime start = task.start().toLocalDateTime();
    if (task.kind() == TaskKind.DEMOULD) {
      start = start.minusMinutes(EARLIER);
    }
    String kind =
        switch (task.kind()) {
          case POUR -> "\"kind\": \"poured\", \"lot\": \"" + task.lot() + "\"";
          case DEMOULD -> "\"kind\": \"demoulded\", \"run\": \"" + task.run().orElseThrow() + "\"";
          case STEP ->
              "\"kind\": \"step\", \"run\": \""
                  + task.run().orElseThrow()
                  + "\", \"step\": "
                  + task.step().orElseThrow();
        };
    return "{"
        + kind
        + ", \"person\": \"ana\", \"start\": \""
        + start
        + "\", \"end\": \""
        + end
        + "\"}";
  }

  @Test
  void whatTakesLongerIsOfferedAndWhatDoesNotIsLeft() {
    String out = Shell.run("learn", file, "--plan", week, "--log", log(1, 0)).done().out();
    assertTrue(out.contains("demould, deep planter, min"), out);
    assertTrue(out.contains("mixing slate, min"), out);
    assertTrue(out.contains("could be taken over"), out);
    out.lines().forEach(line -> assertTrue(line.length() <= 100, line));
    assertEquals(Shell.example(), text(file));
  }

  @Test
  void theBookWrittenHasTheNumbersOfferedAndNothingElse() {
    Path written = folder.resolve("new.json");
    Shell.run("learn", file, "--plan", week, "--log", log(1.05, 0), "--write", written).done();
    Book before = BookFile.read(file);
    Book after = BookFile.read(written);
    assertTrue(after.moulds().get(0).demouldMinutes() > 8, after.moulds().get(0).toString());
    // 1.02 x 1.05 of the volume: 7.1 % of waste.
    assertEquals(7.1, after.moulds().get(0).wastePercent(), 0.11);
    assertEquals(before.mixes(), after.mixes());
    assertEquals(before.orders(), after.orders());
    assertEquals(before.pieces().get(0).route(), after.pieces().get(0).route());
  }

  /** 4 pieces with 3 lost, and 20 at 92 % from the book: (18.4 + 1) / 24 = 80.83 %. */
  @Test
  void whatIsScrappedLowersTheShareThatTurnsOut() {
    int pieces = plan.lots().get(0).runs().get(0).castings();
    String json =
        Shell.run("learn", file, "--plan", week, "--log", log(1, pieces), "--json").done().out();
    double expected = 100 * (18.4 + 4 - pieces) / 24;
    String mean = String.format(Locale.ROOT, "%.2f", expected).replaceAll("0$", "");
    assertTrue(json.contains("\"estimate\": " + mean), mean + " in " + json);
  }

  @Test
  void recordsOfNoLotRunPersonOrMaterialAreToldAllAtOnce() {
    String json =
        """
        {"format": "strickle-progress/1",
         "happened": [
           {"kind": "poured", "lot": "L99", "person": "bo", "start": "2027-04-05T09:00",
            "end": "2027-04-05T09:30"}],
         "used": [{"lot": "L1", "material": "gold", "quantity": 5}]}
        """;
    Path wrong = Shell.file(folder, "wrong.json", json);
    Shell.Result result = Shell.run("learn", file, "--plan", week, "--log", wrong);
    assertEquals(2, result.code());
    assertEquals(3, result.faults().size(), result.err());
    assertTrue(result.err().contains("--log, $.happened[0].lot: found \"L99\""), result.err());
    assertTrue(result.err().contains("$.used[0].material"), result.err());
    Shell.Result two = Shell.run("learn", file, "--plan", week, "--plan", week, "--log", wrong);
    assertEquals(List.of("--log"), two.paths());
  }

  @Test
  void whatIsTakenOverIsNotLearnedASecondTime() {
    Path written = folder.resolve("new.json");
    Path log = log(1.05, 0);
    Shell.run("learn", file, "--plan", week, "--log", log, "--write", written).done();
    String out = Shell.run("learn", written, "--plan", week, "--log", log).done().out();
    assertTrue(out.contains("Nothing to take over"), out);
    Book after = BookFile.read(written);
    assertEquals(11, after.moulds().get(0).demouldMinutes());
  }

  @Test
  void aBookThatSaysAllTurnOutStandsWhenNothingIsLost() {
    String all = Shell.example().replace("\"goodPercent\": 92", "\"goodPercent\": 100");
    Path sure = Shell.file(folder, "sure.json", all);
    String json =
        Shell.run("learn", sure, "--plan", week, "--log", log(1, 0), "--json").done().out();
    assertFalse(json.contains("97.9,\n      \"differs\": true"), json);
    assertTrue(json.contains("\"high\": 100"), json);
  }

  @Test
  void whatIsToldTwiceOrCannotBeIsRefused() {
    Path log = log(1, 0);
    Shell.Result twice =
        Shell.run("learn", file, "--plan", week, "--log", log, "--plan", week, "--log", log);
    assertEquals(2, twice.code());
    assertTrue(twice.err().contains("log 2, $.happened[0]: found told a second time"), twice.err());
    Shell.Result lost = Shell.run("learn", file, "--plan", week, "--log", log(1, 99));
    assertEquals(2, lost.code());
    assertTrue(lost.err().contains(".pieces: found 99; right would be at most"), lost.err());
  }

  @Test
  void recordsOfAPlanOfAnotherBookAreRefusedInOneLine() {
    String other = Shell.example().replace("Kiln Lane Castings", "Another Studio");
    Path elsewhere = Shell.file(folder, "other.json", other);
    Shell.Result result = Shell.run("learn", elsewhere, "--plan", week, "--log", log(1, 0));
    assertEquals(2, result.code());
    assertEquals(1, result.faults().size(), result.err());
    assertTrue(result.err().contains("a plan of another book"), result.err());
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
