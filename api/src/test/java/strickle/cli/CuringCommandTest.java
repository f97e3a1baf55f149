package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.cli.BallastCommandTest.number;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CuringCommandTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"10, 29.2", "15, 21.5", "25, 12.0", "30, 9.1"})
  void sixteenHoursBecomeThese(String room, String hours) {
    // Derived, Q = 5000 K (value from memory).
    String out =
        Shell.run("curing", "--hours", "16", "--at", room, "--activation-kelvin", "5000")
            .done()
            .out();
    assertTrue(
        out.contains(room + ".0 °C  " + " ".repeat(hours.length() == 4 ? 5 : 6) + hours), out);
  }

  @ParameterizedTest
  @CsvSource({"5 C, 0.4778", "50 F, 0.6161", "20, 0.9981", "86 F, 1.5662"})
  void theStandardsRuleIsTheUsualOne(String room, double factor) {
    // EN 1992-1-1 Annex B, Eq. B.10, value from memory.
    Shell.Result result = Shell.run("curing", "--hours", "16", "--at", room, "--json");
    assertEquals(factor, number(result, "factor"), 1e-4);
  }

  @Test
  void aLogOfTemperaturesIsAnAge() {
    // Derived: 23.123 h with Q = 5000 K, 456 °C·h above 0 °C.
    Path log = Shell.file(folder, "log.csv", "hours,temperature\n6,15\n6,77 F\n12,18\n");
    Shell.Result age = Shell.run("curing", "--log", log, "--activation-kelvin", "5000", "--json");
    assertEquals(23.123, number(age, "ageHours"), 0.023);
    Shell.Result degrees = Shell.run("curing", "--log", log, "--datum", "0", "--json");
    assertEquals(456, number(degrees, "degreeHours"), 1e-6);
    String text =
        Shell.run(
                "curing", "--spent", "6@15", "--spent", "6@25", "--spent", "12@18", "--datum",
                "32 F")
            .done()
            .out();
    assertTrue(text.contains("24.0 h at 3 temperatures and is 22.800 h of age old (456.0"), text);
  }

  @Test
  void wrongLinesOfALogAreAllToldByTheirNumber() {
    Path log = Shell.file(folder, "log.csv", "hours,temperature\n6,15\n0,15\n3,99\n4,warm\n");
    Shell.Result result = Shell.run("curing", "--log", log);
    assertEquals(
        List.of(log + " line 3, hours", log + " line 4, temperature", log + " line 5, temperature"),
        result.paths(),
        result.err());
  }

  @Test
  void aLongLogIsReadWhole() {
    String hours = "0.01,15\n0.01,25\n".repeat(100_000);
    Path log = Shell.file(folder, "log.csv", "hours,temperature\n" + hours);
    Shell.Result age = Shell.run("curing", "--log", log, "--datum", "0", "--json");
    assertEquals(200_000 * 0.01 * 20, number(age, "degreeHours"), 1e-6);
  }

  @Test
  void fourWeeksAtFifteenDegreesAreSevenHundredTwentyEightDegreeDays() {
    // civinnovate.com/?p=18387, an exam question with its answer: datum −11 °C, 728 °C·d.
    Shell.Result result = Shell.run("curing", "--spent", "672@15", "--datum", "-11", "--json");
    assertEquals(728, number(result, "degreeHours") / 24, 1e-6);
  }

  @Test
  void theStrengthCurvesAreThoseOfTheStandard() {
    // Blueprints-org/blueprints, test_formula_3_2.py; xcfem/xc, test_ec2_concrete_02.py.
    Shell.Result ten = Shell.run("curing", "--age-days", "10", "--cement", "N", "--json");
    assertEquals(0.84507490, number(ten, "part"), 1e-6);
    Shell.Result seven =
        Shell.run("curing", "--age-days", "7", "--cement", "N", "--fck-mpa", "40", "--json");
    assertEquals(29.382437587, number(seven, "characteristicMpa"), 1e-6);
    // ACI 209R-92, Type I moist, second-hand: 0.70 at 7 days.
    assertEquals(0.70, number(seven, "aci209"), 0.01);
  }

  @Test
  void strengthIsABandForInformationOnly() {
    String out = Shell.run("curing", "--age-days", "0.7").done().out();
    assertTrue(out.contains("for information only: between "), out);
    assertTrue(out.contains("for less than a day the curves are not meant"), out);
  }

  @Test
  void castingsFoundReadyGiveTheirHoursWithASpread() {
    String csv =
        """
        casting,hours,temperature
        "Monday, first",29.2,10
        Tuesday,21.5,15
        Wednesday,12,25
        Thursday,4.55,30
        Thursday,4.55,86 F
        """;
    Path records = Shell.file(folder, "ready.csv", csv);
    Shell.Result json =
        Shell.run("curing", "--records", records, "--activation-kelvin", "5000", "--json");
    assertEquals(4, number(json, "castings"));
    assertEquals(16, number(json, "referenceHours"), 0.05);
    assertEquals(5000, number(json, "kelvin"), 50);
    assertTrue(number(json, "lowHours") < 16 && number(json, "highHours") > 16);
    String text = Shell.run("curing", "--records", records, "--at", "18").done().out();
    assertTrue(text.contains("From 4 castings: ready after "), text);
    assertTrue(text.contains("No promise"), text);
    text.lines().forEach(line -> assertTrue(line.length() <= Lines.WIDEST, line));
  }

  @Test
  void aRoomBelowTheDatumNeverMakesACastingReady() {
    String out = Shell.run("curing", "--hours", "16", "--at", "4", "--datum", "5").done().out();
    assertTrue(out.contains("never"), out);
  }

  @Test
  void whatIsLeftIsToldForARoom() {
    Shell.Result result =
        Shell.run(
            "curing",
            "--hours",
            "16",
            "--spent",
            "8@20",
            "--at",
            "20",
            "--activation-kelvin",
            "0",
            "--json");
    String out = result.done().out();
    String left = "\"stillHours\": {\"low\": 4.8, \"likely\": 8, \"high\": 11.2}";
    assertTrue(out.contains(left), out);
  }

  @ParameterizedTest
  @CsvSource({
    "--hours 0, --hours",
    "--hours 16h, --hours",
    "--at 12, --at",
    "--hours 16 --at cold, --at",
    "--hours 16 --at 90, --at",
    "--hours 16 --activation-kj 41 --datum 0, --activation-kj",
    "--hours 16 --activation-kj 1000, --activation-kj",
    "--hours 16 --datum 20, --datum",
    "--spent 6, --spent",
    "--spent 6@15@3, --spent",
    "--spent -6@15, --spent",
    "--age-days 10 --cement n, --cement",
    "--hours 16 --fck-mpa 40, --fck-mpa",
    "--records none.csv, --records",
    "--hours 16 --records none.csv, --hours",
    "--units us, curing",
  })
  void whatCannotBeIsTold(String words, String path) {
    Shell.Result result = Shell.run((Object[]) ("curing " + words).split(" "));
    assertEquals(2, result.code(), result.err());
    assertEquals(List.of(path), result.paths());
  }

  @Test
  void castingsThatContradictEachOtherAreSaidTo() {
    Path odd =
        Shell.file(folder, "odd.csv", "casting,hours,temperature\na,24,20\nb,2,20\nc,200,20\n");
    String out = Shell.run("curing", "--records", odd).done().out();
    assertTrue(out.contains("They contradict each other"), out);
    Path good =
        Shell.file(
            folder, "good.csv", "casting;hours;temperature\na, b;24,5;20\nb;20;20,5\nc;22;19\n");
    out = Shell.run("curing", "--records", good).done().out();
    assertTrue(out.contains("From 3 castings: ready after 21.9 h"), out);
    assertFalse(out.contains("contradict"), out);
  }

  @ParameterizedTest
  @CsvSource({
    "--hours 16 --at -1, true",
    "--spent 6@-2, true",
    "--spent 6@30F, true",
    "--hours 16 --at 0, false",
    "--hours 16 --at 33F, false"
  })
  void frostIsWarnedOf(String words, boolean warned) {
    String out = Shell.run((Object[]) ("curing " + words).split(" ")).done().out();
    assertEquals(warned, out.contains("Fresh concrete that freezes is lost"), out);
  }

  @Test
  void degreeDaysAndTheDatumAreToldInWords() {
    // civinnovate.com/?p=18387: 28 d at 15 °C above −11 °C are 728 °C·d.
    String[] words = {"curing", "--spent", "672@15", "--datum", "-11"};
    String metric = Shell.run((Object[]) words).done().out().replaceAll("\\s+", " ");
    assertTrue(metric.contains("(17472.0 °C·h, 728.0 °C·d above"), metric);
    List<Object> us = new ArrayList<>(List.of((Object[]) words));
    us.addAll(List.of("--units", "us"));
    String out = Shell.run(us.toArray()).done().out();
    assertTrue(out.contains("Nurse and Saul, datum 12.2 °F"), out);
  }

  @Test
  void twoCastingsSayNothingOfASpread() {
    Path two = Shell.file(folder, "two.csv", "casting,hours,temperature\na,16,20\nb,17,20\n");
    Shell.Result result = Shell.run("curing", "--records", two);
    assertEquals(2, result.code());
    assertTrue(
        result.err().startsWith("--records: found 2 castings; right would be at least 3"),
        result.err());
  }

  @Test
  void wrongLinesOfAFileAreAllToldByNumber() {
    Path log = Shell.file(folder, "log.csv", "hours,temperature\n6,warm\n\n-1,15\n5,2 lb\n");
    Shell.Result result = Shell.run("curing", "--log", log);
    assertEquals(
        List.of(log + " line 2, temperature", log + " line 4, hours", log + " line 5, temperature"),
        result.paths());
    Path short2 = Shell.file(folder, "short.csv", "hours,temperature\n6\n");
    assertEquals(List.of(short2 + " line 2"), Shell.run("curing", "--log", short2).paths());
  }
}
