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
          shop shelf pays 32.00 of 64.00: a share of 50 %, its markup 100.0 %, keystone
        """;
    assertEquals(expected, Shell.run("price", book).done().out());
  }

  /** White blend, black, oil, sealer, box, labour, two tubs, overhead: 29.18 to the cent. */
  @Test
  void everyLineOfTheCostIsToldWhenAskedForAndTheyAddUp() {
    String out = Shell.run("price", book, "--lines").done().out();
    BigDecimal sum = BigDecimal.ZERO;
    int lines = 0;
    for (String name :
        List.of(
            "white blend",
            "iron oxide black",
            "release oil",
            "water-based sealer",
            "medium box",
            "labour",
            "deep tub",
            "mid tub",
            "overhead")) {
      String line =
          out.lines()
              .filter(one -> one.matches("  " + name + " +[0-9.]+"))
              .findFirst()
              .orElseThrow();
      sum = sum.add(new BigDecimal(line.substring(name.length() + 2).strip()));
      lines++;
    }
    assertEquals(9, lines);
    assertEquals(new BigDecimal("29.18"), sum);
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

  @Test
  void markupWageAndDiscountAreAnsweredForEveryChannel() {
    String out =
        Shell.run("price", book, "--markup", "100", "--hourly", "30", "--discount", "10")
            .done()
            .out();
    // (2 x 29.1801 + 0.30) / 0.971 = 60.41; (9.8504 + 30 x 0.878623 + 0.30) / 0.971 = 37.60
    assertTrue(out.contains("own table                      61.00           38.00\n"), out);
    // 57.60 x 0.971 - 0.30 - 29.1801 = 26.4495; 32.6639 / 26.4495 is 23.5 % more
    assertTrue(out.contains("57.60     55.63     26.45    45.9 %          23.5 %\n"), out);
  }

  @Test
  void aBundlePaysTheFixedFeeOnce() {
    String out =
        Shell.run("price", book, "--bundle", "planter-slate=2", "--bundle-price", "110")
            .done()
            .out();
    // 110 x 0.971 - 0.30 - 2 x 29.1801 = 48.15; one by one 2 x 32.6639
    assertTrue(out.contains("106.51     48.15    43.8 %         65.33"), out);
    assertTrue(out.contains("14.1 % less than one by one (128.00)"), out);
  }

  @Test
  void aFairsTableIsSpreadOverWhatIsExpectedToSell() {
    String out = Shell.run("price", book, "--fair", "spring-fair").done().out();
    // (2 + 5 + 11) / 3 = 6 planters; 140 / 6; 6 x 32.6639 - 140; 140 / 32.6639 = 4.3
    assertTrue(out.contains("which is 23.33 each"), out);
    assertTrue(out.contains("leave 55.98"), out);
    assertTrue(out.contains("5 pay for it"), out);
    String json = Shell.run("price", book, "--fair", "spring-fair", "--json").done().out();
    assertTrue(json.contains("\"fair\": {"), json);
  }

  @Test
  void whatIsWrongWithPricesIsToldByTheirOptions() {
    Shell.Result absurd =
        Shell.run("price", book, "--markup", "-1", "--hourly", "-5", "--discount", "100");
    assertEquals(List.of("--markup", "--hourly", "--discount"), absurd.paths());
    assertEquals(
        List.of("--bundle"), Shell.run("price", book, "--bundle", "planter-slate").paths());
    assertEquals(
        List.of("--bundle-price", "--bundle", "--bundle"),
        Shell.run("price", book, "--bundle", "a,b=2", "--bundle-price", "0.001").paths());
    assertEquals(
        List.of("--bundle"),
        Shell.run("price", book, "--bundle", "a=b", "--bundle-price", "9").paths());
    assertEquals(List.of("--fair"), Shell.run("price", book, "--fair", "autumn").paths());
  }
}
