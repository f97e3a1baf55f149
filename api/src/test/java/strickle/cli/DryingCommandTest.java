package strickle.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.cli.BallastCommandTest.number;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The check values are derived: M_e 1000 g, M_0 1050 g, k 0.25 per day. */
class DryingCommandTest {

  private static final String DAYS =
      """
      day,mass
      0,1050.00
      1,1038.94
      2,1030.33
      4,1018.39
      7,1008.69
      """;

  @TempDir Path folder;
  private Path log;

  @BeforeEach
  void writeTheLog() {
    log = Shell.file(folder, "log.csv", DAYS);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 5, 14.3", "0.2, 8, 6.8", "0.1, 11, 3.2"})
  void aSlowDailyLossIsNotDry(String limit, int day, String water) {
    String out = Shell.run("drying", log, "--limit", limit, "--scale-step", "0.01 g").done().out();
    assertTrue(out.contains("  day " + day + " "), out);
    assertTrue(out.contains("free water still in it then      " + water + " g "), out);
    assertTrue(out.contains("A slow daily loss is not dry"), out);
    assertEquals(limit.equals("0.5"), out.contains("has been reached already"), out);
    out.lines().skip(1).forEach(line -> assertTrue(line.length() <= Lines.WIDEST, line));
  }

  @Test
  void theJsonSaysTheSameWithItsBands() {
    Shell.Result result = Shell.run("drying", log, "--scale-step", "0.01", "--json");
    assertEquals(5, number(result, "weighings"));
    assertEquals(41.31, number(result, "lostGrams"), 1e-9);
    // Of the lesser mass, as ASTM C642-97 §5.1 has it: 9.70 g of 1008.69 g in three days.
    assertEquals(100 * 9.70 / 1008.69 / 3, number(result, "lastDailyPercent"), 1e-9);
    assertTrue(result.out().contains("\"limitDays\": {\"low\": 8, \"likely\": 8, \"high\": 8}"));
    assertTrue(result.out().contains("\"format\": \"strickle-drying/1\""));
  }

  @Test
  void aDaysLossIsOfTheLesserMass() {
    // Derived: 1000.0 to 998.0 g is 0.2004 % of the lesser (ASTM C642-97 §5.1), not 0.2000 %.
    Path file = Shell.file(folder, "near.csv", "day,mass\n0,1030\n1,1015\n2,1006\n3,1000\n4,998\n");
    Shell.Result result = Shell.run("drying", file, "--json");
    assertEquals(0.2004, number(result, "lastDailyPercent"), 5e-5);
    assertTrue(Shell.run("drying", file).done().out().contains("0.20 %"));
  }

  @Test
  void timesAndUnitsOfEitherSystemGiveTheSame() {
    // 1 lb = 453.59237 g: NIST, second-hand.
    String times =
        """
        time;mass
        2027-04-05T09:00;1.05 kg
        2027-04-06T09:00;1038.94 g
        2027-04-07T09:00;2.2714889 lb
        2027-04-09T09:00;1018.39
        2027-04-12T09:00;1008.69
        """;
    Path file = Shell.file(folder, "times.csv", times);
    String out = Shell.run("drying", file, "--scale-step", "0.01").done().out();
    assertTrue(out.contains("Tue 13 Apr 2027, day 8  Tue 13 Apr 2027 to Tue 13 Apr 2027\n"), out);
    String json = Shell.run("drying", file, "--scale-step", "0.01", "--json").done().out();
    assertTrue(json.contains("\"likely\": \"2027-04-13T09:00\""), json);
    String us = Shell.run("drying", file, "--scale-step", "0.01", "--units", "us").done().out();
    assertTrue(us.contains("2 lb 3.27 oz"), us);
  }

  private static String spring(String... times) {
    double[] grams = {1050.00, 1038.94, 1030.33, 1018.39, 1008.69};
    StringBuilder csv = new StringBuilder("time,mass\n");
    for (int i = 0; i < times.length; i++) {
      csv.append(times[i]).append(',').append(grams[i]).append('\n');
    }
    return csv.toString();
  }

  @Test
  void timesWithAnOffsetCountElapsedDaysAcrossAClockChange() {
    // Weighed every 24 hours elapsed; where clocks went forward on 14 March the later ones show an
    // hour more.
    Path elapsed =
        Shell.file(
            folder,
            "elapsed.csv",
            spring(
                "2027-03-13T09:00-05:00",
                "2027-03-14T10:00-04:00",
                "2027-03-15T10:00-04:00",
                "2027-03-17T10:00-04:00",
                "2027-03-20T14:00Z"));
    Shell.Result days = Shell.run("drying", log, "--scale-step", "0.01", "--json");
    Shell.Result offset = Shell.run("drying", elapsed, "--scale-step", "0.01", "--json");
    assertEquals(7, number(offset, "days"), 1e-12);
    assertEquals(number(days, "lastDailyPercent"), number(offset, "lastDailyPercent"), 1e-12);
    assertTrue(offset.out().contains("\"likely\": \"2027-03-21T09:00\""), offset.out());
  }

  @Test
  void timesWithAndWithoutAnOffsetAreNotMixed() {
    Path mixed =
        Shell.file(
            folder,
            "mixed.csv",
            spring("2027-03-13T09:00-05:00", "2027-03-14T10:00", "2027-03-15T10:00-04:70"));
    Shell.Result result = Shell.run("drying", mixed);
    assertEquals(List.of(mixed + " line 3, time", mixed + " line 4, time"), result.paths());
    assertTrue(result.err().contains("a time with its offset, as the first one"), result.err());
    Path local =
        Shell.file(folder, "local.csv", spring("2027-03-13T09:00", "2027-03-14T10:00-04:00"));
    assertEquals(List.of(local + " line 3, time"), Shell.run("drying", local).paths());
  }

  @Test
  void aLongLogIsReadWhole() {
    StringBuilder csv = new StringBuilder("day,mass\n");
    for (int i = 0; i < 20_000; i++) {
      double day = i / 1000.0;
      csv.append(String.format(Locale.ROOT, "%.3f,%.2f%n", day, 1000 + 50 * Math.exp(-day / 4)));
    }
    Path file = Shell.file(folder, "long.csv", csv.toString());
    Shell.Result result = Shell.run("drying", file, "--scale-step", "0.01", "--json");
    assertEquals(20_000, number(result, "weighings"));
    // What the shorter logs of the same curve say.
    assertTrue(result.out().contains("\"likely\": 8"), result.out());
    Path huge = Shell.file(folder, "huge.csv", csv.toString().repeat(40));
    assertEquals(List.of("FILE"), Shell.run("drying", huge).paths());
  }

  @Test
  void semicolonsLetNumbersHaveADecimalComma() {
    String plain = "day,mass\n0,1050\n1,1038.9\n2.5,1026.8\n4,1018.4\n7,1008.7\n9,1005.3\n";
    Path points = Shell.file(folder, "points.csv", plain);
    Path commas = Shell.file(folder, "commas.csv", plain.replace(',', ';').replace('.', ','));
    assertEquals(
        Shell.run("drying", points, "--json").done().out(),
        Shell.run("drying", commas, "--json").done().out());
    Path thousands = Shell.file(folder, "thousands.csv", "day;mass\n0;1.050,5\n1;1.038,9\n");
    assertEquals(
        List.of(thousands + " line 2, mass", thousands + " line 3, mass"),
        Shell.run("drying", thousands).paths());
  }

  @Test
  void tooFewWeighingsAreRefused() {
    Path few = Shell.file(folder, "few.csv", "day,mass\n0,1050\n1,1039\n2,1030\n3,1024\n");
    Shell.Result result = Shell.run("drying", few);
    assertEquals(2, result.code());
    assertEquals(
        List.of(
            few
                + ": found 4 weighings; right would be at least 5, or nothing can be predicted"
                + " from them"),
        result.faults());
  }

  @Test
  void contradictoryWeightsAreToldByTheirLine() {
    Path wrong = Shell.file(folder, "wrong.csv", DAYS.replace("2,1030.33", "2,1046"));
    assertEquals(List.of(wrong + " line 4, mass"), Shell.run("drying", wrong).paths());
    Path unit = Shell.file(folder, "unit.csv", DAYS.replace("7,1008.69", "7,2.22"));
    Shell.Result result = Shell.run("drying", unit);
    assertEquals(List.of(unit + " line 6, mass"), result.paths());
    assertTrue(result.err().contains("in the same unit"), result.err());
    Path back = Shell.file(folder, "back.csv", DAYS.replace("4,1018", "2,1018"));
    assertEquals(List.of(back + " line 5, day"), Shell.run("drying", back).paths());
  }

  @Test
  void aLossThatHasNotSlowedIsNotPredicted() {
    Path file =
        Shell.file(folder, "even.csv", "day,mass\n0,1050\n1,1045\n2,1040\n3,1035\n4,1030\n");
    Shell.Result result = Shell.run("drying", file);
    assertEquals(2, result.code());
    assertTrue(result.err().startsWith(file + ": found a loss that has not slowed"), result.err());
  }

  @Test
  void wrongLinesAreAllToldByTheirNumber() {
    String csv = "day,mass\nMonday,1050\n1,-3\n2,12 fl oz\n3,\n4,1000,5\n";
    Path wrong = Shell.file(folder, "wrong.csv", csv.replace(",5\n", "\n"));
    assertEquals(
        List.of(
            wrong + " line 2, day",
            wrong + " line 3, mass",
            wrong + " line 4, mass",
            wrong + " line 5, mass"),
        Shell.run("drying", wrong).paths());
    Path cells = Shell.file(folder, "cells.csv", csv);
    assertEquals(List.of(cells + " line 6"), Shell.run("drying", cells).paths());
    Path time = Shell.file(folder, "time.csv", "time,mass\n2027-02-30,5\n2027-03-01T25:00,5\n");
    assertEquals(
        List.of(time + " line 2, time", time + " line 3, time"), Shell.run("drying", time).paths());
  }

  @Test
  void filesThatAreNoSuchTableAreRefused() throws IOException {
    Path none = folder.resolve("none.csv");
    assertEquals(List.of("FILE"), Shell.run("drying", none).paths());
    assertEquals(List.of("FILE"), Shell.run("drying", folder).paths());
    assertEquals(
        List.of("FILE"), Shell.run("drying", Shell.file(folder, "empty.csv", "\n")).paths());
    Path bytes = Files.write(folder.resolve("bytes.csv"), "day,mäss\n".getBytes(ISO_8859_1));
    assertEquals(List.of("FILE"), Shell.run("drying", bytes).paths());
    Path head = Shell.file(folder, "head.csv", "day,weight\n0,5\n");
    Shell.Result result = Shell.run("drying", head);
    assertEquals(
        List.of(
            head + " line 1: found \"day,weight\"; right would be \"time,mass\" or \"day,mass\""),
        result.faults());
    Path bare = Shell.file(folder, "bare.csv", "day,mass\n");
    assertEquals(List.of(bare.toString()), Shell.run("drying", bare).paths());
  }

  @ParameterizedTest
  @CsvSource({
    "--limit, 0",
    "--limit, 11",
    "--limit, small",
    "--scale-step, 0",
    "--scale-step, 2 kg",
    "--scale-step, 1 ml",
    "--units, imperial"
  })
  void aValueThatCannotBeIsToldWithWhatWouldBeRight(String option, String value) {
    Shell.Result result = Shell.run("drying", log, option, value);
    assertEquals(2, result.code());
    assertEquals(List.of(option), result.paths());
  }
}
