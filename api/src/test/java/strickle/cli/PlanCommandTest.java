package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;

class PlanCommandTest {

  private static final Duration QUICKLY = Duration.ofSeconds(20);

  @TempDir Path folder;
  private Path book;

  @BeforeEach
  void writeTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
  }

  @Test
  void theSameCommandWritesTheSameBytesTwiceAndTheyPassTheAudit() throws IOException {
    byte[] first = written("first.json", "--seed", "3");
    byte[] second = written("second.json", "--seed", "3");
    assertArrayEquals(first, second);
    Book read = BookFile.read(book);
    Plan plan = PlanFile.parse(new String(first, UTF_8));
    assertEquals(List.of(), Audit.of(read, plan));
    assertEquals(3, plan.seed());
    assertEquals("2027-04-05T00:00-05:00", plan.from().toString());
  }

  @Test
  void theTextSaysFirstWhetherOrdersAreOnTime() {
    List<String> lines = plan("--from", "2027-04-05").out().lines().toList();
    assertEquals(
        "Kiln Lane Castings: plan from Mon 5 Apr 2027 00:00, times in America/Chicago",
        lines.get(0));
    assertEquals("", lines.get(1));
    assertEquals("The order is on time.", lines.get(2));
  }

  @Test
  void theTextHoldsAllThatAMakerNeeds() {
    String out = plan("--from", "2027-04-05").out();
    for (String words :
        List.of(
            "Mon 5 Apr 2027\n  Ana\n    09:00-09:31  pour slate",
            "1 x deep planter, slate",
            "demould",
            "wet sand the rim",
            "wet cement is caustic",
            "  L1: slate, Mon 5 Apr 2027 09:00, Ana\n",
            "1 casting in deep tub, mid tub\n",
            "lay 7872 g of ballast on the core of each casting\n",
            "white blend            1937.3 g\n",
            "iron oxide black         58.1 g\n",
            "water                   498.9 g\n",
            "wet mix, all together  2494.3 g\n",
            "O-104  a garden shop  Sat 24 Apr 2027 17:00  ",
            "\nIn all\n",
            "4 castings")) {
      assertTrue(out.contains(words), words + " in\n" + out);
    }
  }

  @Test
  void theSetEndsWhenThePlanSaysAndTheCautionComesOnce() {
    String out = plan("--from", "2027-04-05").out();
    // By EN 1992-1-1 (B.10) 20 h at 20 °C take 22 h 1 min at 18 °C, from 09:23 when washing up
    // begins.
    assertTrue(out.contains("L1-1  set until Tue 07:24"), out);
    assertEquals(out.indexOf("caustic"), out.lastIndexOf("caustic"));
    assertTrue(out.indexOf("caustic") < out.indexOf("pour slate"));
  }

  @Test
  void withACoverEachOrderSaysHowSureItIsAndThePlanNotesIt() throws IOException {
    // Three are owed at 92 %: four castings bring them in 96.6 of 100 cases, five in 99.5.
    assertTrue(plan("--from", "2027-04-05", "--cover", "90").out().contains("96.5 % sure"));
    String out = plan("--from", "2027-04-05", "--cover", "99").out();
    assertTrue(out.contains("99.5 % sure"), out);
    assertTrue(out.contains("cover       99 %: "), out);
    assertTrue(out.contains("5 castings"), out);
    assertFalse(plan("--from", "2027-04-05").out().contains("sure"));
    byte[] bytes = written("covered.json", "--cover", "99");
    assertEquals(99, PlanFile.parse(new String(bytes, UTF_8)).coverPercent().orElseThrow());
  }

  @Test
  void thePlanSaysHowNearItIsToTheBestThereCanBe() {
    String out = plan("--from", "2027-04-05").out();
    assertTrue(out.contains("  at best     nothing more to win by planning longer\n"), out);
  }

  @Test
  void noLineIsWiderThanAHundredColumns() {
    Shell.run("plan", "demo", "--schedules", "20", "--cover", "90")
        .done()
        .out()
        .lines()
        .forEach(line -> assertTrue(line.length() <= 100, line));
  }

  @Test
  void noWordOfTheSearchReachesTheMaker() {
    String out = plan("--from", "2027-04-05").out() + Shell.run("plan", "--help").out();
    for (String word : List.of("score", "solver", "heuristic", "constraint", "Timefold")) {
      assertFalse(out.contains(word), word);
    }
  }

  @Test
  void aLateOrderIsToldInTheFirstSentenceAndWithItsOrder() {
    book = Shell.file(folder, "book.json", Shell.example("2027-04-24T17:00", "2027-04-12T17:00"));
    String out = plan("--from", "2027-04-05").out();
    assertTrue(out.contains("\n1 of 1 order is late, by "), out);
    assertTrue(out.contains("Mon 12 Apr 2027 17:00"), out);
    assertTrue(out.contains("late by "), out);
    assertTrue(out.contains("late hours"), out);
    List<String> lines = out.lines().toList();
    int order =
        lines.indexOf(
            lines.stream().filter(line -> line.contains("O-104")).findFirst().orElseThrow());
    assertTrue(lines.get(order + 1).startsWith("          "), out);
  }

  @Test
  void ordersFromStockNeedNoPour() {
    book = Shell.file(folder, "book.json", Shell.example("\"onHand\": 1,", "\"onHand\": 4,"));
    String out = plan("--from", "2027-04-05").out();
    assertTrue(out.contains("from stock"), out);
    assertFalse(out.contains("Lots"), out);
    assertFalse(out.contains("caustic"), out);
  }

  @Test
  void aBookWithoutOrdersIsPlannedToo() {
    String json = Shell.example();
    String orders = json.substring(json.indexOf("\"orders\""), json.indexOf("\"channels\""));
    book = Shell.file(folder, "book.json", Shell.example(orders, ""));
    assertTrue(plan().out().contains("There are no orders, so there is nothing to pour."));
  }

  @Test
  void planningBeginsWithTheFirstClimateIfThatIsStillToCome() {
    assertTrue(plan().out().contains("plan from Mon 5 Apr 2027 00:00, times in America/Chicago"));
  }

  @Test
  void otherwisePlanningBeginsTodayInTheStudiosZone() {
    book = Shell.file(folder, "book.json", Shell.example("2027-04-05T00:00", "2027-04-01T00:00"));
    assertTrue(plan().out().contains("plan from Sun 4 Apr 2027 00:00, times in America/Chicago"));
  }

  @Test
  void planningBeginsAtTheTimeGiven() {
    String out = plan("--from", "2027-04-05T10:15").out();
    assertTrue(out.contains("plan from Mon 5 Apr 2027 10:15"), out);
    assertTrue(out.contains("    10:15-"), out);
  }

  @Test
  void theDemoBeginsWhereItsOrdersDo() {
    String out = Shell.run("plan", "demo", "--schedules", "5").done().out();
    assertTrue(out.contains("plan from Mon 1 Mar 2027 00:00, times in America/Halifax"), out);
  }

  @Test
  void progressIsToldOnATerminalOnlyAndNeverOnStandardOutput() {
    Shell.Result quiet = plan("--from", "2027-04-05");
    Shell.Result seen =
        Shell.onTerminal().call("plan", book, "--from", "2027-04-05", "--schedules", "50");
    assertTrue(seen.err().startsWith("\rlaying out… "), seen.err());
    assertTrue(seen.err().endsWith(" \r"), seen.err());
    assertFalse(seen.err().contains("\n"), seen.err());
    assertEquals(quiet.out(), seen.out());
  }

  @Test
  void planningForATimeEnds() {
    String out = Shell.run("plan", book, "--from", "2027-04-05", "--seconds", "1").done().out();
    assertTrue(out.contains("The order is on time."), out);
  }

  @Test
  void anyWholeNumberIsASeed() {
    plan("--seed", "-9223372036854775808");
    plan("--seed=9223372036854775807");
  }

  @Test
  void aFolderThatIsNotThereIsToldBeforePlanning() {
    assertTimeout(
        QUICKLY,
        () -> {
          Shell.Result result = planFor("1000000000", folder.resolve("none").resolve("plan.json"));
          assertEquals(1, result.code());
          assertEquals("", result.out());
          assertEquals(1, result.faults().size(), result.err());
          assertTrue(result.err().contains("found no folder"), result.err());
        });
  }

  @Test
  void aFolderIsNoPlaceForAPlan() {
    assertTimeout(
        QUICKLY,
        () -> {
          Shell.Result result = planFor("1000000000", folder);
          assertEquals(1, result.code());
          assertTrue(result.err().contains("found a folder"), result.err());
        });
  }

  @Test
  void theBookItselfIsNeverWrittenOver() throws IOException {
    Shell.Result result = planFor("5", folder.resolve(".").resolve("book.json"));
    assertEquals(2, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().startsWith("--out: found the book itself"), result.err());
    assertEquals(Shell.example(), Files.readString(book));
  }

  @Test
  void anOldPlanIsReplacedAndNothingElseLeftBehind() throws IOException {
    Path old = Shell.file(folder, "plan.json", "old");
    assertTrue(planFor("5", old).done().out().contains("The plan is written to " + old));
    assertTrue(Files.readString(old).startsWith("{\n  \"format\": \"strickle-plan/1\""));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(book, old), files.sorted().toList());
    }
  }

  @Test
  void aFaultyBookLeavesTheOldPlan() throws IOException {
    Path old = Shell.file(folder, "plan.json", "old");
    book = Shell.file(folder, "book.json", "{");
    assertEquals(2, planFor("5", old).code());
    assertEquals("old", Files.readString(old));
  }

  private Shell.Result plan(String... more) {
    List<String> words = Stream.concat(Stream.of("--schedules", "50"), Stream.of(more)).toList();
    Stream<Object> all = Stream.concat(Stream.of("plan", book), words.stream());
    return Shell.run(all.toArray()).done();
  }

  private Shell.Result planFor(String schedules, Path out) {
    return Shell.run("plan", book, "--from", "2027-04-05", "--schedules", schedules, "--out", out);
  }

  private byte[] written(String name, String... more) throws IOException {
    Path file = folder.resolve(name);
    Stream<Object> words =
        Stream.of("plan", book, "--from", "2027-04-05", "--schedules", "500", "--out", file);
    Shell.run(Stream.concat(words, Stream.of(more)).toArray()).done();
    return Files.readAllBytes(file);
  }
}
