package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchCommandTest {

  private static final double GRAMS_PER_LB = 453.59237;
  private static final double ML_PER_CUBIC_FOOT = 28316.846592;

  /** US Navy training course NAVEDTRA 14071, ch. 17, "Example Using Absolute Volume Method". */
  private static final String[] NAVY = {
    "batch",
    "--volume-ml",
    "27 ft3",
    "--air",
    "5",
    "--water",
    "percent=50,of=cement",
    "--dry",
    "cement:parts=610,density=3.15,cement=100",
    "--dry",
    "sand:parts=1152,density=2.65,cement=0",
    "--dry",
    "coarse:parts=1735,density=2.60,cement=0"
  };

  private static final String MORTAR_CEMENT = "cement:parts=1,density=3.15,cement=100";
  private static final String MORTAR_WATER = "percent=40,of=cement";

  @TempDir Path folder;

  static String json(String[] command, String... more) {
    List<Object> words = new ArrayList<>(List.of((Object[]) command));
    words.addAll(List.of(more));
    words.add("--json");
    return Shell.run(words.toArray()).done().out();
  }

  static double number(String json, String field) {
    Matcher matcher = Pattern.compile("\"" + field + "\": (-?[0-9.]+)").matcher(json);
    assertTrue(matcher.find(), field + " in " + json);
    return Double.parseDouble(matcher.group(1));
  }

  static double number(String json, String material, String field) {
    return number(json.substring(json.indexOf("\"material\": \"" + material + '"')), field);
  }

  private Path book() {
    return Shell.file(folder, "book.json", Shell.example());
  }

  @Test
  void theNavyCourseWeighsAndFillsWhatItPublishes() {
    // Read: cement 610, sand 1152, coarse 1735, water 305 lb fill 3.10, 6.97, 10.69 and 4.89 ft³,
    // air 1.35 ft³; 0.15 % for its rounded steps.
    String json = json(NAVY);
    Map<String, Double> pounds =
        Map.of("cement", 610.0, "sand", 1152.0, "coarse", 1735.0, "water", 305.0);
    Map<String, Double> cubicFeet =
        Map.of("cement", 3.10, "sand", 6.97, "coarse", 10.69, "water", 4.89);
    pounds.forEach(
        (material, lb) -> {
          assertEquals(lb, number(json, material, "grams") / GRAMS_PER_LB, 0.0015 * lb);
          double feet = number(json, material, "volumeMl") / ML_PER_CUBIC_FOOT;
          double published = cubicFeet.get(material);
          assertEquals(published, feet, 0.0015 * published + 0.005);
        });
    assertEquals(5, number(json, "airPercent"), 1e-6);
    assertEquals(3802, number(json, "wetGrams") / GRAMS_PER_LB, 0.0015 * 3802);
    assertEquals(2374.4, number(json, "airFreeKgPerM3"), 0.0015 * 2374.4);
  }

  @Test
  void aMeasuredDensityYieldsWhatTheStudyGuideSays() {
    // Field-technician study guide (ASTM C138), second-hand: 3886 lb at 145.0 lb/ft³ = 26.80 ft³.
    String json =
        json(
            new String[] {
              "batch",
              "--volume-ml",
              "26.80 ft3",
              "--density",
              "145.0 lb/ft3",
              "--dry",
              "cement:parts=564,density=3.15,cement=100",
              "--dry",
              "coarse:parts=1800,cement=0",
              "--dry",
              "sand:parts=1240,cement=0",
              "--water",
              "percent=50,of=cement"
            });
    assertEquals(3886, number(json, "wetGrams") / GRAMS_PER_LB, 0.001 * 3886);
    assertEquals(568.2, number(json, "cementKgPerM3") * 1.685555, 0.1);
    assertFalse(json.contains("airPercent"), json);
  }

  @Test
  void studioMortarWeighsWhatItsPartsDo() {
    // Derived: 1 : 2 : 0.40 has 2309.5 kg/m³ and 0.67927 kg of cement in a litre.
    String[] mortar = {
      "batch",
      "--volume-ml",
      "1000",
      "--dry",
      MORTAR_CEMENT,
      "--dry",
      "sand:parts=2,density=2.65,cement=0",
      "--water",
      MORTAR_WATER
    };
    assertEquals(2309.5, number(json(mortar), "wetDensityKgPerM3"), 0.05);
    assertEquals(679.27, number(json(mortar), "cement", "exactGrams"), 0.005);
    assertEquals(2263.3, number(json(mortar, "--air", "2"), "wetDensityKgPerM3"), 0.05);
    assertEquals(2309.5 * 1.1, number(json(mortar, "--waste", "10"), "neededGrams"), 0.06);
  }

  // ASTM C979 §1.4, read: at most 10 % of the cement. The table of bases is derived.
  @ParameterizedTest
  @CsvSource({"0.5, 4.5, 7.5", "1, 6, 10", "1.5, 7.5, 12.5", "2, 9, 15", "3, 12, 20"})
  void pigmentStandsAgainstCementAndDryMix(String sand, double three, double five) {
    Map.of("3", three, "5", five)
        .forEach(
            (ofDry, ofCement) -> {
              String json =
                  json(
                      new String[] {
                        "batch",
                        "--volume-ml",
                        "1000",
                        "--dry",
                        MORTAR_CEMENT,
                        "--dry",
                        "sand:parts=" + sand + ",density=2.65,cement=0",
                        "--pigment",
                        "red:percent=" + ofDry + ",density=4.5",
                        "--water",
                        MORTAR_WATER
                      });
              String check = json.substring(json.indexOf("\"pigments\""));
              assertEquals(ofCement, number(check, "percentOfCement"), 1e-8);
              assertEquals(Double.parseDouble(ofDry), number(check, "percentOfDry"), 1e-8);
              assertEquals(ofCement > 10, json.contains("\"verdict\": \"too_much\""), json);
              assertEquals(ofCement > 10, json.contains("above 10 %"), json);
            });
  }

  @Test
  void ofABlendTheTotalIsWarnedOf() {
    String out =
        Shell.run(
                "batch",
                "--volume-ml",
                "1000",
                "--dry",
                MORTAR_CEMENT,
                "--water",
                MORTAR_WATER,
                "--pigment",
                "red:percent=6,of=cement,density=4.5",
                "--pigment",
                "black:percent=5,of=cement,density=4.6")
            .done()
            .out();
    assertTrue(out.contains("together: 11.0 % of the dry mix, 11.0 % of the cement"), out);
    assertTrue(out.contains("Note: the pigment is 11.0 % of the cement, above 10 %"), out);
  }

  @Test
  void ofABlendTheLeastMostIsWarnedOf() {
    // ASTM C979 §1.4, read: the total is not to exceed the maximum of any pigment in the blend.
    Object[] words = {
      "batch",
      "--volume-ml",
      "1000",
      "--dry",
      MORTAR_CEMENT,
      "--water",
      MORTAR_WATER,
      "--pigment",
      "red:percent=4,of=cement,density=4.5,most=6",
      "--pigment",
      "black:percent=3,of=cement,density=4.6"
    };
    String out = Shell.run(words).done().out();
    String flat = out.replaceAll("\\s+", " ");
    assertTrue(flat.contains("pigment is 7.0 % of the cement, above 6 %, the most that red"), out);
    assertTrue(flat.contains("a most of its own, which is not known: black"), out);
    words[8] = "red:percent=3,of=cement,density=4.5,most=6";
    assertFalse(Shell.run(words).done().out().contains("above"));
    words[8] = "red:percent=3,of=cement,density=4.5,most=0";
    Shell.Result refused = Shell.run(words);
    assertEquals(List.of("--pigment red.most"), refused.paths());
  }

  @Test
  void withUnknownCementThePigmentCannotBeChecked() {
    String out =
        Shell.run(
                "batch",
                "--volume-ml",
                "1000",
                "--dry",
                "bag:parts=1,density=2.8",
                "--water",
                "percent=20",
                "--pigment",
                "red:percent=3,density=4.5")
            .done()
            .out();
    assertTrue(out.contains("red: 3.0 % of the dry mix, of the cement cannot be checked"), out);
    assertTrue(out.contains("Note: the pigment cannot be checked"), out);
  }

  @Test
  void aPastBatchIsMadeAgainForOtherMoulds() {
    String[] past = {
      "--past", "cement:mass=1kg,cement=100", "--past", "sand:mass=2 kg,cement=0",
      "--past", "red:mass=50,kind=pigment", "--past", "water:mass=400",
      "--past-filled-ml", "1450", "--past-left-grams", "105"
    };
    List<String> command = new ArrayList<>(List.of("batch", "--volume-ml", "2900"));
    command.addAll(List.of(past));
    String json = json(command.toArray(new String[0]));
    assertEquals(2 * 3345, number(json, "neededGrams"), 1e-6);
    assertEquals(2000 * 3345.0 / 3450, number(json, "cement", "exactGrams"), 1e-6);
    assertEquals(5, number(json.substring(json.indexOf("\"pigments\"")), "percentOfCement"), 1e-8);
    // For a mould of the book as well.
    List<String> mould = new ArrayList<>(List.of("batch", book().toString(), "--mould"));
    mould.add("planter-deep=2");
    mould.addAll(List.of(past));
    double each = 1.180 * 1.02 * 3345 / 1.45;
    assertEquals(2 * each, number(json(mould.toArray(new String[0])), "neededGrams"), 1e-5);
  }

  @Test
  void percentagesMayBeOfTheWaterAndOfTheWhole() {
    String json =
        json(
            new String[] {
              "batch",
              "--volume-ml",
              "1000",
              "--dry",
              MORTAR_CEMENT,
              "--water",
              "percent=25,of=total",
              "--pigment",
              "liquid:percent=4,of=water,density=1.1"
            });
    // Of what is weighed, to 0.1 g.
    assertEquals(25, number(json, "water", "percentOfTotal"), 0.01);
    assertEquals(4, number(json, "liquid", "percentOfWater"), 0.02);
  }

  @Test
  void aDensityThatCannotBeIsNoted() {
    String[] dense = {
      "batch",
      "--volume-ml",
      "1 l",
      "--dry",
      MORTAR_CEMENT,
      "--water",
      MORTAR_WATER,
      "--density",
      "2400"
    };
    String json = json(dense);
    assertTrue(number(json, "airPercent") < -5, json);
    assertTrue(json.contains("the measured density is"), json);
  }

  @Test
  void customaryUnitsAreWrittenWhenAskedFor() {
    List<Object> words = new ArrayList<>(List.of((Object[]) NAVY));
    words.addAll(List.of("--units", "us", "--step-grams", "1 oz"));
    String out = Shell.run(words.toArray()).done().out();
    // 3802 lb in 27 ft³ are 140.81 lb/ft³ in the course, rounded step by step.
    assertTrue(out.contains("140.9 lb/ft³"), out);
    assertTrue(Pattern.compile("cement +6(09|10) lb [0-9.]+ oz").matcher(out).find(), out);
  }
}
