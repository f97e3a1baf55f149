package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.plan.Plan;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.audit.Audit;

class ReplanCommandTest {

  @TempDir Path folder;
  private Path book;
  private Path plan;
  private Task pour;

  @BeforeEach
  void planTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
    plan = folder.resolve("plan.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "50", "--out", plan).done();
    pour =
        PlanFile.read(plan).tasks().stream()
            .filter(task -> task.kind() == TaskKind.POUR)
            .findFirst()
            .orElseThrow();
  }

  private Shell.Result replan(Object... more) {
    List<Object> words = new ArrayList<>(List.of("replan", book, "--plan", plan));
    words.addAll(List.of("--schedules", "100"));
    words.addAll(List.of(more));
    return Shell.run(words.toArray());
  }

  /** The first pour began twenty minutes late. */
  private Path progress() {
    String happened =
        "{\"kind\": \"poured\", \"lot\": \""
            + pour.lot()
            + "\", \"person\": \""
            + pour.person()
            + "\", \"start\": \""
            + pour.start().plusMinutes(20).toLocalDateTime()
            + "\", \"end\": \""
            + pour.end().plusMinutes(20).toLocalDateTime()
            + "\"}";
    return Shell.file(
        folder,
        "done.json",
        "{\"format\": \"strickle-progress/1\", \"happened\": [" + happened + "]}");
  }

  private String after() {
    return pour.end().plusMinutes(30).toLocalDateTime().toString();
  }

  @Test
  void whatHasMovedComesFirstAndThenThePlan() {
    String out = replan("--progress", progress(), "--now", after()).done().out();
    int moved = out.indexOf("Laid out anew as things stand on ");
    int week = out.indexOf("\nLots\n");
    assertTrue(moved == 0 && week > 0, out);
    out.lines().forEach(line -> assertTrue(line.length() <= Lines.WIDEST, line));
  }

  @Test
  void aPlanInWhichNothingHasHappenedYetStaysAsItIs() {
    String out = replan("--now", "2027-04-05").done().out();
    assertTrue(out.contains("Nothing moves. No order gets later or earlier."), out);
  }

  @Test
  void thePlanThatIsWrittenCanBeLaidOutAnewInTurn() {
    Path first = folder.resolve("first.json");
    replan("--progress", progress(), "--now", after(), "--out", first).done();
    Plan written = PlanFile.read(first);
    assertEquals(List.of(), Audit.of(BookFile.read(book), written));
    assertTrue(written.history().isPresent());
    String again =
        Shell.run("replan", book, "--plan", first, "--now", after(), "--schedules", "50")
            .done()
            .out();
    assertTrue(again.contains("Nothing moves."), again);
  }

  @Test
  void theSameSchedulesAndSeedGiveTheSameAnswer() {
    Object[] words = {"--progress", progress(), "--now", after(), "--json", "--seed", "3"};
    String first = replan(words).done().out();
    assertTrue(first.startsWith("{\n  \"format\": \"strickle-replan/1\","), first);
    assertEquals(first, replan(words).done().out());
  }

  @Test
  void whatCannotHaveHappenedIsToldWithItsPlace() {
    Shell.Result result = replan("--progress", progress(), "--now", "2027-04-05");
    assertEquals(Outcome.WRONG, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().startsWith("--progress $.happened[0].start: found "), result.err());
  }

  @Test
  void wrongOptionsAreToldAtOnce() {
    Shell.Result result =
        replan("--now", "noon", "--frozen-hours", "-1", "--frozen-until", "2027-04-06");
    assertEquals(List.of("--now", "--frozen-hours", "--frozen-hours"), result.paths());
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void aTimeYearsAfterThePlanIsRefusedAtOnceWithWhatWouldBeRight() {
    for (String now : List.of("2199-12-31", "2035-01-01T10:00")) {
      Shell.Result result = replan("--now", now);
      assertEquals(Outcome.WRONG, result.code(), result.err());
      assertEquals("", result.out());
      assertEquals(List.of("--now"), result.paths());
      String fault = result.faults().get(0);
      assertTrue(fault.startsWith("--now: found " + now), fault);
      assertTrue(fault.contains("a time not after 20"), fault);
      assertTrue(fault.contains(", 1000 days after the end of the plan"), fault);
    }
  }

  @Test
  void neitherBookNorProgressIsOverwritten() {
    for (Path input : List.of(book, progress())) {
      Shell.Result result = replan("--progress", progress(), "--now", after(), "--out", input);
      assertEquals(Outcome.WRONG, result.code(), result.err());
    }
  }

  @Test
  void aPlanUnderWayIsAskedLikeAnyOther() {
    Path rest = folder.resolve("rest.json");
    replan("--progress", progress(), "--now", after(), "--out", rest).done();
    String piece = BookFile.read(book).pieces().get(0).id();
    String promise =
        Shell.run("promise", book, "--plan", rest, "--piece", piece, "--quantity", "1")
            .done()
            .out();
    assertTrue(promise.contains("\nReady "), promise);
    String bound = Shell.run("bound", book, "--plan", rest).done().out();
    assertTrue(bound.contains("; the plan has "), bound);
    String whatIf =
        Shell.run(
                "what-if", book, "--plan", rest, "--schedules", "60", "--try", "helper:2027-04-08")
            .done()
            .out();
    assertTrue(whatIf.contains("to the plan laid out anew "), whatIf);
  }

  @Test
  void whatToBuyForAPlanUnderWayIsKnown() {
    Path rest = folder.resolve("rest.json");
    replan("--progress", progress(), "--now", after(), "--out", rest).done();
    String out = Shell.run("shopping", book, "--plan", rest).done().out();
    assertTrue(out.contains("Used and left"), out);
  }

  @Test
  void ordersThatAreNewToThePlanAreSaid() {
    String text = Shell.example().replace("\"id\": \"O-104\"", "\"id\": \"O-105\"");
    Path changed = Shell.file(folder, "changed.json", text);
    String out =
        Shell.run("replan", changed, "--plan", plan, "--now", "2027-04-05", "--schedules", "50")
            .done()
            .out();
    assertTrue(out.contains("1 order is new to the plan"), out);
    assertTrue(out.contains("O-105"), out);
  }

  @Test
  void aPlanOfAnotherBookIsRefused() {
    Shell.Result result =
        Shell.run("replan", "demo", "--plan", plan, "--now", "2027-04-05", "--schedules", "10");
    assertEquals(Outcome.WRONG, result.code());
    assertTrue(result.err().startsWith("--plan: found a plan made for another book"), result.err());
    assertEquals(1, result.err().lines().count());
  }
}
