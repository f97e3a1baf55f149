package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example planter, whose costs stand on the page on the files. */
class TargetCommandTest {

  @TempDir Path folder;
  private Path book;

  @BeforeEach
  void writeTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
  }

  private Shell.Result target(Object... more) {
    Object[] words = {"target", book, "--piece", "planter-slate"};
    Object[] all = new Object[words.length + more.length];
    System.arraycopy(words, 0, all, 0, words.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return Shell.run(all);
  }

  @Test
  void theTextSaysWhatIsMissingAndWhatWouldCloseIt() {
    String expected =
        """
        deep planter, slate at 38.00 USD, own table: the margin of 40 % does not hold. It is 19.5 %, and
        the piece costs 7.78 too much.
             minutes   full cost    may cost         net      profit
                52.7       29.18       21.39       36.60        7.42
          By its typical run, poured as a lot of its own.

        The largest costs
          labour            19.33    66.2 %
          overhead           3.89    13.3 %
          white blend        2.88     9.9 %

        Each lever alone, and the value at which the margin would hold
          minutes             52.7 min  35.0 min
          run size          2 castings  cannot, even at 3 castings (margin 26.5 %)
          good share              92 %  cannot, even at 100 % (margin 25.5 %)
          mix cost         1.41 USD/kg  cannot, even at 0.00 USD/kg (margin 29.6 %)
          mould life      150 castings  cannot, even if they last for ever (margin 20.0 %)
          channel fee            2.9 %  cannot, even at 0 % (margin 22.4 %)
          price              38.00 USD  51.63 USD

        Castings in a run (a lot of its own) by minutes saved: the margin, * where it holds
          castings      as now       -10 %       -20 %       -30 %       -40 %       -50 %
                 1      -1.3 %       6.9 %      15.1 %      23.3 %      31.5 %      39.7 %
                 2      19.5 %      25.6 %      31.7 %      37.9 %     44.0 %*     50.1 %*
                 3      26.5 %      31.9 %      37.3 %     42.7 %*     48.1 %*     53.5 %*
        """;
    String out = target("--price", "38", "--channel", "own-table", "--margin", "40").done().out();
    assertEquals(expected, out);
  }

  @Test
  void aTargetThatHoldsSaysHowFarEachLeverMayGo() {
    String out = target("--price", "64", "--channel", "own-table").done().out();
    assertTrue(out.contains("the margin of 30 % holds. It is 51.0 %"), out);
    assertTrue(out.contains("how far it may go until the margin only just holds"), out);
    // The price for 30 % by the page on the files is 43.9345.
    assertTrue(out.contains("64.00 USD  43.94 USD"), out);
  }

  @Test
  void aPlanGivesTheMinutes() {
    Path plan = folder.resolve("week.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "50", "--out", plan).done();
    String out = target("--price", "38", "--channel", "own-table", "--plan", plan).done().out();
    // Each of the four castings is poured by itself, as there is one of each tub: 65 / 0.92.
    assertTrue(out.contains("70.7 min"), out);
    assertTrue(out.contains("As planned"), out);
    assertTrue(out.contains("run size           1 casting"), out);
  }

  @Test
  void whatThereIsNowIsToldAsItIsInTheBook() {
    String poor = Shell.example("\"goodPercent\": 92", "\"goodPercent\": 0.04");
    book = Shell.file(folder, "poor.json", poor);
    String out = target("--price", "38", "--channel", "own-table").done().out();
    assertTrue(out.contains("  good share            0.04 %  cannot, even at 100 %"), out);
  }

  @Test
  void jsonHasTheSameInNumbers() {
    String out =
        target(
                "--price",
                "38",
                "--channel",
                "own-table",
                "--margin",
                "40",
                "--reference-price",
                "389",
                "--json")
            .done()
            .out();
    for (String words :
        List.of(
            "\"format\": \"strickle-target/1\"",
            "\"holds\": false",
            "\"gap\": -7.7821",
            "\"kind\": \"price\", \"unit\": \"USD\", \"present\": 38, \"closing\": 51.63",
            "\"costPercent\": 7.5013")) {
      assertTrue(out.contains(words), words + " in " + out);
    }
  }

  @Test
  void whatIsWrongIsToldByItsOption() {
    Shell.Result absurd = target("--price", "0", "--channel", "own-table", "--margin", "100");
    assertEquals(2, absurd.code());
    assertEquals(List.of("--price", "--margin"), absurd.paths());
    Shell.Result unknown = target("--price", "38", "--channel", "own-tabel");
    assertEquals(List.of("--channel"), unknown.paths());
    assertTrue(unknown.err().contains("maybe \"own-table\""), unknown.err());
    assertEquals(
        List.of("--reference-price"),
        target("--price", "38", "--channel", "own-table", "--reference-price", "-3").paths());
  }
}
