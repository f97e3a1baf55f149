package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.json.BookFile;
import strickle.json.PriceFile;
import strickle.price.PriceRequest;
import strickle.price.Pricing;

/** The figures are those of the page on the files for this very book. */
class PriceCommandTest {

  @TempDir Path folder;
  private Path book;

  @BeforeEach
  void writeTheExample() {
    book = Shell.file(folder, "book.json", Shell.example());
  }

  @Test
  void theTextHoldsCostAndChannels() {
    String expected =
        """
        Kiln Lane Castings: what a good piece costs and what to ask, in USD
        Each piece poured in its typical run; suggested prices leave a margin of 30 % or a little more
        and end in 0.00.

        deep planter, slate
           minutes  material    labour      wear  overhead  full cost
              52.7      5.77     19.33      0.19      3.89      29.18
          sold by                  price       net    profit    margin  per hour  break-even  suggested
          own table                64.00     61.84     32.66    51.0 %     59.18       30.37      44.00
          shop shelf               64.00     32.00      2.82     8.8 %     25.21       58.37      84.00
        """;
    assertEquals(expected, Shell.run("price", book).done().out());
  }

  @Test
  void jsonIsTheFileOfThePricesAndNothingElse() {
    PriceRequest request = new PriceRequest(BigDecimal.valueOf(30), BigDecimal.ZERO);
    String expected = PriceFile.write(Pricing.standard(BookFile.read(book), request));
    String out = Shell.run("price", book, "--json").done().out();
    assertEquals(expected, out);
    for (String words :
        List.of(
            "\"format\": \"strickle-prices/1\"",
            "\"minutes\": 52.7174",
            "\"full\": 29.1801",
            "\"earnedPerHour\": 59.1763",
            "\"suggested\": 44")) {
      assertTrue(out.contains(words), words + " in " + out);
    }
  }

  @Test
  void marginAndEndingAreTheOnesAskedFor() {
    // 43.9345 by the page on the files, up to the next price that ends in .99.
    String out = Shell.run("price", book, "--ending", "0.99").done().out();
    assertTrue(out.contains("  43.99\n"), out);
    // (29.1801 + 0.3) / (1 - 0.029 - 0.5) = 62.5904
    String half = Shell.run("price", book, "--margin", "50", "--ending", "0.5").done().out();
    assertTrue(half.contains("  63.50\n"), half);
    assertTrue(half.contains("a margin of 50 %"), half);
    assertTrue(half.contains("end in 0.50."), half);
  }

  @Test
  void aPieceWithoutAPriceIsStillCosted() {
    String json = Shell.example(", \"price\": 64.0, \"leftoverValue\"", ", \"leftoverValue\"");
    String out = Shell.run("price", Shell.file(folder, "book.json", json)).done().out();
    assertTrue(out.contains("29.18"), out);
    assertTrue(out.contains("-         -         -         -         -       30.37"), out);
  }

  @Test
  void aMarginThatAFeeLeavesNoRoomForIsToldWithTheChannel() {
    Shell.Result result = Shell.run("price", book, "--margin", "98");
    assertEquals(2, result.code());
    assertEquals(1, result.faults().size(), result.err());
    assertTrue(result.err().startsWith("--margin: found 98 beside the fee of"), result.err());
    assertTrue(result.err().contains("\"own-table\""), result.err());
  }

  @Test
  void theDemoIsPricedInItsOwnCurrency() {
    String out = Shell.run("price", "demo").done().out();
    assertTrue(out.startsWith("Gannet Row Studio: "), out);
    assertTrue(out.contains("in CAD\n"), out);
    out.lines().forEach(line -> assertTrue(line.length() <= 100, line));
  }

  @Test
  void aPlanIsPricedByItsLotsBesideTheTypicalRun() {
    Path plan = folder.resolve("week.json");
    Shell.run("plan", book, "--from", "2027-04-05", "--schedules", "50", "--out", plan).done();
    String out = Shell.run("price", book, "--plan", plan).done().out();
    assertTrue(out.contains("typical run  as planned  difference"), out);
    // There is one of each tub, so that every casting is mixed and set up for by itself:
    // 33 minutes for 0.92 pieces instead of 1.84, at 0.440476 a minute.
    assertTrue(out.contains("29.18       37.08       +7.90\n"), out);
    assertTrue(out.contains("not once for every 2"), out);
    assertTrue(out.contains("What the plan costs"), out);
    String json = Shell.run("price", book, "--plan", plan, "--json").done().out();
    assertTrue(json.contains("\"basis\": \"planned\""), json);
    assertTrue(json.contains("\"comparison\": {"), json);
  }

  @Test
  void aPlanOfAnotherBookIsRefusedByItsOption() {
    Path plan = folder.resolve("week.json");
    Shell.run("plan", "demo", "--schedules", "20", "--out", plan).done();
    Shell.Result result = Shell.run("price", book, "--plan", plan);
    assertEquals(2, result.code());
    assertTrue(result.err().startsWith("--plan"), result.err());
  }
}
