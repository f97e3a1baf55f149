package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.cli.BatchCommandTest.json;
import static strickle.cli.BatchCommandTest.number;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Batches of the example book. */
class BatchOfBookTest {

  @TempDir Path folder;

  private Path book() {
    return Shell.file(folder, "book.json", Shell.example());
  }

  @Test
  void aMouldOfTheBookWeighsWhatItsPlanDoes() {
    // formats.md, lot L1.
    String out =
        Shell.run("batch", book(), "--mix", "slate", "--mould", "planter-deep").done().out();
    for (String figure : List.of("1937.3 g", "58.1 g", "498.9 g", "2494.3 g")) {
      assertTrue(out.contains(figure), figure + " in " + out);
    }
    assertTrue(out.contains("what is on hand makes 6 (iron oxide black runs out first)"), out);
    assertTrue(out.replaceAll("\\s+", " ").contains("a bag of white blend makes 11"), out);
    out.lines().forEach(line -> assertTrue(line.length() <= Lines.WIDEST, line));
  }

  @Test
  void thePigmentsOfABookKeepToTheirOwnMost() {
    // 3 % of a dry mix with 45 % cement are 6.7 % of the cement; ASTM C979 §1.4, read: no more than
    // the maximum of any pigment in it.
    String black = "\"relativeDensity\": 4.6,";
    String most = black + " \"mostPercentOfCement\": 5,";
    Path file = Shell.file(folder, "most.json", Shell.example(black, most));
    String out = Shell.run("batch", file, "--mix", "slate", "--volume-ml", "500").done().out();
    String flat = out.replaceAll("\\s+", " ");
    assertTrue(
        flat.contains("6.7 % of the cement, above 5 %, the most that iron oxide black"), out);
    Path wrong = Shell.file(folder, "wrong.json", Shell.example(black, most.replace("5,", "0,")));
    assertEquals(List.of("$.materials[1].mostPercentOfCement"), Shell.run("check", wrong).paths());
  }

  @Test
  void aCoarseScaleShowsItsError() {
    String json =
        json(batchOf(book()), "--mix", "slate", "--mould", "planter-deep", "--step-grams", "5");
    assertEquals(60, number(json, "iron-black", "grams"), 1e-9);
    assertEquals(100 * (60 - 58.1177) / 58.1177, number(json, "iron-black", "errorPercent"), 0.01);
    assertTrue(json.contains("iron oxide black is weighed 3.2 % off"), json);
    assertEquals(2495, number(json, "wetGrams"), 1e-9);
    String text =
        Shell.run(
                "batch", book(), "--mix", "slate", "--mould", "planter-deep", "--step-grams", "60")
            .done()
            .out();
    // 2494.3 g in steps of 60 are 2520 g, 1.03 % more, and never 2460.
    assertTrue(text.matches("(?s).*wet mix, all together +2520.0 g +[+]1.03 %.*"), text);
  }

  private static String[] batchOf(Path book) {
    return new String[] {"batch", book.toString()};
  }

  @Test
  void whatIsLeftOfARoundedUpBatchFindsItsMould() {
    String json =
        json(
            batchOf(book()),
            "--mix",
            "slate",
            "--mould",
            "planter-deep",
            "--spare",
            "cup=100",
            "--spare",
            "vat=20 l",
            "--round-up-grams",
            "500");
    double left = number(json, "leftoverGrams");
    assertEquals(2500 - 2494.3, left, 0.05);
    assertTrue(json.contains("\"leftover\": []"), json);
    String more =
        json(
            batchOf(book()),
            "--mix",
            "slate",
            "--mould",
            "planter-deep",
            "--spare",
            "cup=100",
            "--round-up-grams",
            "1kg");
    // 505.7 g make two cups of 207.2 g; the planter's only tubs are full.
    assertTrue(more.contains("{\"mould\": \"cup\", \"castings\": 2, \"leftGrams\": 91.2"), more);
    assertFalse(more.contains("{\"mould\": \"planter-deep\", \"castings\": 1, \"left"), more);
  }

  @Test
  void limitsOfTheStudioAreNoted() {
    String out =
        Shell.run("batch", book(), "--mix", "slate", "--mould", "planter-deep=6").done().out();
    String flat = out.replaceAll("\\s+", " ");
    assertTrue(flat.contains("Note: the batch is above the studio's limit of 9000 g"), out);
    assertTrue(flat.contains("pouring takes 30 min, but the mix can be worked for 25"), out);
    assertTrue(flat.contains("there are not forms enough for 6 castings at once"), out);
  }
}
