package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.plan.Plan;
import strickle.plan.audit.Audit;

class PromiseCommandTest {

  private static final String PIECE = "planter-slate";

  @TempDir Path folder;
  private Path book;
  private Path plan;

  @BeforeEach
  void planTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
    plan = folder.resolve("plan.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "50", "--out", plan).done();
  }

  private Shell.Result promise(Object... more) {
    List<Object> words = new java.util.ArrayList<>(List.of("promise", book, "--plan", plan));
    words.addAll(List.of("--schedules", "50"));
    words.addAll(List.of(more));
    return Shell.run(words.toArray());
  }

  @Test
  void theDateComesFirstAndThenWhereItGoes() {
    String out = promise("--piece", PIECE, "--quantity", "2").done().out();
    int date = out.indexOf("\nReady ");
    int place = out.indexOf("\nWhere it goes\n");
    assertTrue(0 < date && date < place, out);
    assertTrue(out.contains(": no present order becomes later.\n"), out);
    assertTrue(out.indexOf("pour ") > place && out.contains("first seal coat"), out);
    out.lines().forEach(line -> assertTrue(line.length() <= Lines.WIDEST, line));
  }

  @Test
  void aDateOnTheSameDayWithoutATimeIsItsEnd() {
    String out =
        promise("--piece", PIECE, "--quantity", "2", "--latest", "2027-09-01").done().out();
    String yes = "By Wed 1 Sep 2027 23:59: yes, and no present order becomes later.\n";
    assertTrue(out.contains(yes), out);
  }

  @Test
  void aDateThatIsImpossibleIsAnAnswerToo() {
    String out =
        promise("--piece", PIECE, "--quantity", "2", "--latest", "2027-04-06").done().out();
    assertTrue(out.contains("By Tue 6 Apr 2027 23:59: no. Even if the studio did nothing"), out);
  }

  @Test
  void whatIsWrittenIsAPlanOfTheBookThatIsWritten() {
    Path newPlan = folder.resolve("new-plan.json");
    Path newBook = folder.resolve("new-book.json");
    String out =
        promise(
                "--piece",
                PIECE,
                "--quantity",
                "3",
                "--out",
                newPlan,
                "--book-out",
                newBook,
                "--order",
                "N-7",
                "--for",
                "a neighbour")
            .done()
            .out();
    assertTrue(out.contains("Written to " + newPlan), out);
    Book with = BookFile.read(newBook);
    Plan written = PlanFile.read(newPlan);
    assertEquals(List.of(), Audit.of(with, written));
    assertEquals("a neighbour", with.order("N-7").buyer());
    assertEquals(3, with.order("N-7").lines().get(0).quantity());
    assertTrue(
        written.orders().stream()
            .anyMatch(one -> one.order().equals("N-7") && one.lateMinutes() == 0));
    // And so the next promise can be made on top of it.
    Shell.run("promise", newBook, "--plan", newPlan, "--piece", PIECE, "--quantity", "1").done();
  }

  @Test
  void neitherTheBookNorThePlanThatIsReadIsOverwritten() throws Exception {
    for (String option : List.of("--out", "--book-out")) {
      for (Path read : List.of(book, plan)) {
        String before = Files.readString(read);
        Shell.Result result = promise("--piece", PIECE, "--quantity", "1", option, read);
        assertEquals(2, result.code(), result.err());
        assertTrue(result.err().startsWith(option + ": found the "), result.err());
        assertEquals(before, Files.readString(read));
      }
    }
  }

  @Test
  void jsonIsThePromiseAndNothingElse() {
    String out =
        promise("--piece", PIECE, "--quantity", "2", "--latest", "2027-04-06", "--json")
            .done()
            .out();
    assertTrue(out.startsWith("{\n  \"format\": \"strickle-promise/1\","), out);
    for (String words :
        List.of(
            "\"order\": \"promise\"",
            "\"piece\": \"planter-slate\"",
            "\"quantity\": 2",
            "\"kept\": {",
            "\"pouredWith\": [",
            "\"kind\": \"demould\"",
            "\"way\": \"impossible\"",
            "\"alone\": \"2027-04-")) {
      assertTrue(out.contains(words), words + " in " + out);
    }
    assertFalse(out.contains("Ready "), out);
  }

  @Test
  void whatIsWrongIsToldUnderTheOptions() {
    Shell.Result result =
        promise("--piece", "planter-slte", "--quantity", "1", "--latest", "2027-04-04");
    assertEquals(2, result.code());
    assertEquals(List.of("--piece", "--latest"), result.paths());
    assertTrue(result.err().contains("did you mean \"planter-slate\"?"), result.err());
    assertEquals(List.of("--quantity"), promise("--piece", PIECE, "--quantity", "0").paths());
    String tooMany = promise("--piece", PIECE, "--quantity", "99999").err();
    assertTrue(tooMany.startsWith("--quantity, as it would be $.orders: found "), tooMany);
  }

  @Test
  void aPlanOfAnotherBookIsRefused() {
    Shell.file(folder, "book.json", Shell.example("\"setHours\": 20", "\"setHours\": 21"));
    Shell.Result result = promise("--piece", PIECE, "--quantity", "1");
    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("--plan: found what is no plan of this book"), result.err());
  }

  @Test
  void aBookWithoutOrdersHasAnEmptyPlanToPromiseOn() {
    String json =
        Shell.example().replaceFirst("(?s)\"orders\": \\[.*?\\n  \\],", "\"orders\": [],");
    Path empty =
        Shell.file(
            folder, "empty.json", json.replaceFirst("(?s)\"pins\": \\[.*?\\]", "\"pins\": []"));
    Path none = folder.resolve("none.json");
    Shell.run("plan", empty, "--from", "2027-04-05", "--schedules", "1", "--out", none).done();
    String out =
        Shell.run("promise", empty, "--plan", none, "--piece", PIECE, "--quantity", "2")
            .done()
            .out();
    assertTrue(out.contains("Where it goes"), out);
    assertFalse(out.contains("If others may slip"), out);
  }
}
