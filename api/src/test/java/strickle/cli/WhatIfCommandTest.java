package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;

/**
 * The example with its order due long before it can be ready: one set of tubs for four castings, so
 * every casting waits for the one before.
 */
class WhatIfCommandTest {

  private static final String SCHEDULES = "900";

  @TempDir Path folder;
  private Path book;
  private Path plan;

  @BeforeEach
  void planTheExample() {
    String json = Shell.example("\"due\": \"2027-04-24T17:00\"", "\"due\": \"2027-04-13T17:00\"");
    book = Shell.file(folder, "book.json", json);
    plan = folder.resolve("plan.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "50", "--out", plan).done();
  }

  private Shell.Result call(Object... more) {
    List<Object> words = new ArrayList<>(List.of("what-if", book, "--plan", plan));
    words.addAll(List.of("--schedules", SCHEDULES));
    words.addAll(List.of(more));
    return Shell.run(words.toArray());
  }

  @Test
  void theTextSaysWhatHelpsWhatItCostsAndWhatDoesNothing() {
    String out = call().done().out();
    assertTrue(out.startsWith("Kiln Lane Castings: what would happen to the plan from Mon 5"), out);
    assertTrue(out.contains("As planned: 1 late order with late hours of "), out);
    assertTrue(out.contains("one more deep tub and one more"), out);
    // 14.50 + 12.00, over 150 castings each.
    assertTrue(out.contains("26.50, bought once;"), out);
    assertTrue(out.contains("0.1767 a casting"), out);
    assertTrue(out.contains("Would change nothing: "), out);
    assertTrue(out.contains("a room never cooler than 20 °C"), out);
    out.lines().forEach(line -> assertTrue(Width.of(line) <= 100, line));
  }

  /** The figures of both are the same: what was planned, and what each change costs. */
  @Test
  void theJsonHasTheFiguresOfTheText() {
    String text = call().done().out().replaceAll("\\s+", " ");
    String json = call("--json").done().out();
    Matcher late = Pattern.compile("\"weightedLateHours\": ([0-9.]+)").matcher(json);
    assertTrue(late.find(), json);
    assertTrue(text.contains("with late hours of " + late.group(1) + ","), text);
    Matcher amount = Pattern.compile("\"amount\": ([0-9.]+)").matcher(json);
    int amounts = 0;
    while (amount.find()) {
      String money = new BigDecimal(amount.group(1)).setScale(2, RoundingMode.HALF_UP) + "";
      amounts += text.contains(money + ", ") ? 1 : 0;
    }
    assertTrue(amounts > 0, text);
  }

  @Test
  void theSameCommandGivesTheSameAnswer() {
    assertEquals(call().done().out(), call().done().out());
  }

  @Test
  void whatIsTriedByHandIsTriedOneByOneAndTogether() {
    String out = call("--try", "form:tub-a+1", "--try", "form:tub-b+1", "--json").done().out();
    for (String words :
        List.of(
            "\"format\": \"strickle-what-if/1\"",
            "\"book\": \"Kiln Lane Castings\"",
            "\"planningAlone\": {",
            "\"change\": \"form:tub-a+1\"",
            "\"change\": \"form:tub-b+1\"",
            "\"change\": \"form:tub-a+1 form:tub-b+1\"",
            "\"words\": \"one more deep tub and one more mid tub\"",
            "\"amount\": 26.5",
            "\"eachCasting\": 0.1767",
            "\"helps\": true",
            "\"helps\": false")) {
      assertTrue(out.contains(words), words + " in " + out);
    }
  }

  @Test
  void thePlanAndItsBookAreWrittenAndBelongTogether() {
    Path newPlan = folder.resolve("new-plan.json");
    Path newBook = folder.resolve("new-book.json");
    String out =
        call(
                "--try",
                "form:tub-a+1",
                "--try",
                "form:tub-b+1",
                "--out",
                newPlan,
                "--book-out",
                newBook)
            .done()
            .out();
    assertTrue(out.contains("The plan is written to " + newPlan), out);
    assertTrue(out.contains("The book is written to " + newBook), out);
    Book changed = BookFile.read(newBook);
    Plan better = PlanFile.read(newPlan);
    assertEquals(2, changed.form("tub-a").count());
    assertEquals(2, changed.form("tub-b").count());
    assertEquals(List.of(), Audit.of(changed, better));
    assertFalse(Audit.of(BookFile.read(book), better).isEmpty(), "it needs the second set");
  }

  @Test
  void everythingWrongWithWhatIsTriedIsToldAtOnce() {
    Shell.Result wrong = call("--try", "from:tub-a+1", "--try", "room:warm", "--seed", "x");
    assertEquals(2, wrong.code());
    assertEquals(List.of("--seed", "--try", "--try"), wrong.paths());
    assertTrue(wrong.err().contains("form:ID+1"), wrong.err());
    Shell.Result unknown = call("--try", "form:tub-c+1", "--try", "helper:2027-04-01");
    assertEquals(2, unknown.code());
    assertEquals(List.of("--try", "--try"), unknown.paths());
    assertTrue(unknown.err().contains("\"tub-a\""), unknown.err());
    assertTrue(unknown.err().contains("2027-04-05"), unknown.err());
  }

  @Test
  void filesAreWrittenOnlyOfWhatWasAskedForAndNeverOverWhatIsRead() throws Exception {
    assertEquals(List.of("--out"), call("--out", folder.resolve("x.json")).paths());
    String before = Files.readString(plan);
    assertEquals(List.of("--out"), call("--try", "room:20", "--out", plan).paths());
    assertEquals(List.of("--book-out"), call("--try", "room:20", "--book-out", book).paths());
    Path same = folder.resolve("same.json");
    Shell.Result twice = call("--try", "room:20", "--out", same, "--book-out", same);
    assertEquals(List.of("--book-out"), twice.paths());
    assertEquals(before, Files.readString(plan));
  }

  @Test
  void aPlanOfAnotherBookIsRefused() {
    Path other =
        Shell.file(folder, "other.json", Shell.example("\"setHours\": 20", "\"setHours\": 30"));
    Shell.Result result = Shell.run("what-if", other, "--plan", plan);
    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("--plan: found what is no plan of this book"), result.err());
  }

  @Test
  void thePlanMustBeGiven() {
    Shell.Result result = Shell.run("what-if", book);
    assertEquals(2, result.code());
    assertTrue(result.err().contains("--plan"), result.err());
  }

  @Test
  void aTerminalSeesHowFarItIs() {
    Shell.Result result =
        Shell.onTerminal()
            .call("what-if", book, "--plan", plan, "--try", "room:20", "--schedules", "40");
    assertTrue(result.err().contains("trying… 1 of 4 searches"), result.err());
    assertEquals(0, result.code());
  }
}
