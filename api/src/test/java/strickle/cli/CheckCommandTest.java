package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.safety.Advice;
import strickle.safety.RouteSense;

class CheckCommandTest {

  private static final String PIN =
      "\"pins\": [{\"kind\": \"pour\", \"piece\": \"planter-slate\", \"castings\": 1,"
          + " \"start\": \"2027-04-06T09:30\", \"person\": \"ana\"}]";

  @TempDir Path folder;

  @Test
  void aGoodBookIsSaidToBeOne() {
    Path book = Shell.file(folder, "book.json", Shell.example());
    assertEquals(
        book + " can be planned: 1 piece, 1 order, 4 castings to pour.",
        Shell.run("check", book).done().out().strip());
  }

  @Test
  void theDemoIsAGoodBook() {
    String out = Shell.run("check", "demo").done().out();
    assertTrue(out.startsWith("demo can be planned: 9 pieces, 7 orders, "), out);
  }

  @Test
  void jsonSaysWhatTheTextSays() {
    String fine = Shell.run("check", "demo", "--json").done().out();
    assertTrue(fine.contains("\"format\": \"strickle-check/1\""), fine);
    assertTrue(fine.contains("\"canBePlanned\": true"), fine);
    assertTrue(fine.contains("\"pieces\": 9,\n  \"orders\": 7,"), fine);
    assertTrue(fine.contains("\"faults\": []"), fine);
    for (Advice advice : RouteSense.of(Demo.book(Size.MEDIUM))) {
      for (String words : List.of(advice.path(), advice.because(), advice.basis())) {
        assertTrue(fine.contains("\": \"" + words + '"'), words + " in " + fine);
      }
    }
    assertEquals(
        RouteSense.of(Demo.book(Size.MEDIUM)).size(), fine.split("\"basis\": ", -1).length - 1);
  }

  @Test
  void jsonHoldsEveryFaultAndEndsAsTheTextDoes() {
    String wrong =
        Shell.example("\"volumeMl\": 1180", "\"volumeMl\": -5")
            .replace("\"goodPercent\": 92", "\"goodPercent\": 0");
    Path book = Shell.file(folder, "book.json", wrong);
    Shell.Result text = Shell.run("check", book);
    Shell.Result data = Shell.run("check", book, "--json");
    assertEquals(2, text.code());
    assertEquals(2, data.code());
    assertEquals("", data.err());
    assertEquals(2, text.paths().size());
    assertTrue(data.out().contains("\"canBePlanned\": false"), data.out());
    for (String path : text.paths()) {
      assertTrue(data.out().contains("{\"path\": \"" + path + "\", \"found\": "), data.out());
    }
  }

  @Test
  void jsonHoldsAPinThatCannotBeKept() {
    Path book = Shell.file(folder, "book.json", Shell.example("\"pins\": []", PIN));
    Shell.Result late = Shell.run("check", book, "--from", "2027-04-07", "--json");
    assertEquals(2, late.code());
    assertTrue(late.out().contains("\"path\": \"$.pins[0].start\""), late.out());
  }

  @Test
  void jsonNamesTheStepsThatWereNotJudged() {
    String json = Shell.example("wet sand the rim", "ponder the rim");
    Path book = Shell.file(folder, "book.json", json);
    String out = Shell.run("check", book, "--json").done().out();
    assertTrue(out.contains("\"notJudged\": [\"ponder the rim\"]"), out);
  }

  @Test
  void aCureOfTwoHoursIsAdvised() {
    // Common practice, no source; the mould of the example sets for 20 h.
    String json =
        Shell.example(
            "\"after\": {\"wait\": \"cure\", \"hours\": 120}",
            "\"after\": {\"wait\": \"cure\", \"hours\": 2}");
    String out = Shell.run("check", Shell.file(folder, "book.json", json)).done().out();
    assertTrue(out.contains("takes 20 h to set"), out);
    assertTrue(out.contains("(Based on setHours of the mould"), out);
  }

  @Test
  void aPinIsHeldAgainstTheStartGiven() {
    Path book = Shell.file(folder, "book.json", Shell.example("\"pins\": []", PIN));
    Shell.run("check", book, "--from", "2027-04-05").done();
    Shell.Result late = Shell.run("check", book, "--from", "2027-04-07");
    assertEquals(2, late.code());
    assertTrue(late.err().startsWith("$.pins[0].start: found "), late.err());
  }
}
