package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SensitivityCommandTest {

  @TempDir Path folder;
  private Path book;

  @BeforeEach
  void writeTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
  }

  @Test
  void theFiveStrongestStandUnderEachOther() {
    String out =
        Shell.run("sensitivity", book, "--channel", "own-table", "--piece", "planter-slate")
            .done()
            .out();
    assertEquals(2 + 1 + 5, out.lines().count(), out);
    // 6.4 x 0.971; a tenth of 19.3297
    assertTrue(out.contains("64 USD         -6.21         +6.21\n"), out);
    assertTrue(out.contains("22 USD/h         +1.93         -1.93\n"), out);
  }

  @Test
  void jsonHasAsManyNumbersAsAreAskedFor() {
    String out =
        Shell.run("sensitivity", book, "--channel", "shop-shelf", "--most", "3", "--json")
            .done()
            .out();
    assertTrue(out.contains("\"format\": \"strickle-sensitivity/1\""), out);
    assertEquals(3, out.lines().filter(line -> line.contains("\"swing\"")).count(), out);
  }

  @Test
  void aPlanGivesTheMinutes() {
    Path plan = folder.resolve("week.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "50", "--out", plan).done();
    String out =
        Shell.run("sensitivity", book, "--channel", "own-table", "--plan", plan).done().out();
    // 4 x (68 x 0.971 - 0.30) - 4 x 37.0799
    assertTrue(out.contains("a profit of 114.59 USD, with the minutes planned"), out);
  }

  @Test
  void whatIsWrongIsToldByItsOption() {
    Shell.Result absurd = Shell.run("sensitivity", book, "--channel", "x", "--by", "0");
    assertEquals(2, absurd.code());
    assertEquals(List.of("--by"), absurd.paths());
    assertEquals(
        List.of("--channel", "--piece"),
        Shell.run("sensitivity", book, "--channel", "x", "--piece", "y").paths());
    assertEquals(
        List.of("--price"),
        Shell.run("sensitivity", book, "--channel", "own-table", "--price", "9").paths());
  }
}
