package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiftCommandTest {

  private static final double KG_PER_POUND = 0.45359237;

  private static String out(String words) {
    return Shell.run((Object[]) words.split(" ", -1)).done().out();
  }

  private static double figure(String name, String words) {
    String out = out(words + " --json");
    Matcher found = Pattern.compile("\"" + name + "\": (-?[0-9.]+)").matcher(out);
    assertTrue(found.find(), out);
    return Double.parseDouble(found.group(1));
  }

  @Test
  void theMostIsThatOfThePublishedEquation() {
    // NIOSH, read at ccohs.org/oshanswers/ergonomics/niosh/calculating_rwl.html: 23 kg.
    String best = "lift --reach-mm 250 --height-mm 750 --travel-mm 250 --grip 1";
    assertEquals(23, figure("limitKg", best), 1e-9);
    assertTrue(out(best).startsWith("limit   23.000 kg: 23.000 kg at the very best x 1.000"));
  }

  @Test
  void theOriginOfTheManualsExampleIsAsPrinted() {
    // DHHS (NIOSH) 94-110, example 4, second-hand: 34.9 lb; heights that give the printed
    // multipliers, and pounds differ from kilograms by 1 %.
    String origin =
        "lift --reach-mm 25cm --height-mm 22in --travel-mm 36in --often 0.88 --grip 0.95";
    assertEquals(34.9 * KG_PER_POUND, figure("limitKg", origin), 34.9 * KG_PER_POUND * 0.015);
    assertEquals(.94, figure("heightFactor", origin), 0.005);
    assertEquals(.87, figure("travelFactor", origin), 0.005);
  }

  @Test
  void theDestinationOfTheManualsExampleIsAsPrinted() {
    // Same example: 15.2 lb, with HM .50 (inferred) and VM .78.
    String destination =
        "lift --reach-mm 50cm --height-mm 59in --travel-mm 36in --often 0.88 --grip 1";
    assertEquals(15.2 * KG_PER_POUND, figure("limitKg", destination), 15.2 * KG_PER_POUND * 0.015);
    assertEquals(.78, figure("heightFactor", destination), 0.005);
  }

  @Test
  void aLoadIsHeldAgainstTheLimit() {
    // Computed: 25 / (23 x .625 x .775 x .88 x .9).
    assertEquals(25 / (23 * .625 * .775 * .88 * .9), figure("index", "lift --mass 25kg"), 1e-6);
    assertTrue(out("lift --mass 25kg").contains("2.83 x the limit; lift with two"));
    assertFalse(out("lift --mass 5kg").contains("lift with two"));
  }

  @Test
  void whatIsTooFarShouldNotBeLifted() {
    String far = "lift --mass 5kg --reach-mm 631";
    assertTrue(out(far).contains("nothing should be lifted so"));
    assertFalse(out(far + " --json").contains("\"index\""));
  }

  @Test
  void theSourceAndTheSheetAreNamed() {
    for (String words : List.of("lift", "lift --json", "lift --units us")) {
      assertTrue(out(words).contains("NIOSH lifting equation"), out(words));
      assertTrue(out(words).contains("product's sheet."), out(words));
    }
    assertTrue(out("lift --units us").startsWith("limit   19 lb "), out("lift --units us"));
    out("lift --mass 25kg").lines().forEach(line -> assertTrue(line.length() <= Lines.WIDEST));
  }

  @ParameterizedTest
  @CsvSource({
    "lift --mass 0, --mass",
    "lift --mass 5floz, --mass",
    "lift --reach-mm 11m, --reach-mm",
    "lift --twist-degrees 181, --twist-degrees",
    "lift --often 1.1, --often",
    "lift --grip good, --grip",
    "lift --height-mm 5kg, --height-mm"
  })
  void whatIsNoLiftIsRefused(String words, String path) {
    Shell.Result refused = Shell.run((Object[]) words.split(" ", -1));
    assertEquals(2, refused.code());
    assertEquals(List.of(path), refused.paths(), refused.err());
  }
}
