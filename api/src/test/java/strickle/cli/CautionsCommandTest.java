package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.safety.Caution;

class CautionsCommandTest {

  @TempDir Path folder;

  @Test
  void eachCautionIsToldOnceWithItsSource() {
    Path book = Shell.file(folder, "book.json", Shell.example());
    String out = Shell.run("cautions", book).done().out();
    for (Caution caution :
        new Caution[] {Caution.WET_CEMENT, Caution.DRY_DUST, Caution.LIFTING, Caution.CHROMATE}) {
      assertEquals(out.indexOf(head(caution)), out.lastIndexOf(head(caution)), caution.title());
      assertTrue(out.contains(head(caution)), out);
    }
    assertTrue(out.contains("  source  OSHA guidance 3351"), out);
    assertTrue(out.contains("a full pack of white blend, 22.7 kg (50.0 lb)"), out);
    assertTrue(out.endsWith("\nFollow your local codes and the product's sheet.\n"), out);
    out.lines().forEach(line -> assertTrue(line.length() <= Lines.WIDEST, line));
  }

  @Test
  void thePublishedMostIsSaidWhereThingsAreLifted() {
    // NIOSH, read at ccohs.org/oshanswers/ergonomics/niosh/calculating_rwl.html: 23 kg, 51 lb.
    assertTrue(Shell.run("cautions", "demo").done().out().contains("23 kg (51 lb)"));
  }

  @Test
  void aPlanIsToldWhatItsOwnTasksCallFor() {
    Path book = Shell.file(folder, "book.json", Shell.example());
    Path plan = folder.resolve("week.json");
    Shell.run("plan", book, "--schedules", "1", "--out", plan).done();
    String out = Shell.run("cautions", book, "--plan", plan).done().out();
    String words = out.replaceAll("\\s+", " ");
    assertTrue(words.contains("the ballast of a deep planter, 7.9 kg"), out);
    assertFalse(out.contains("filled, "), out);
    assertFalse(out.contains(head(Caution.SANDING)), out);
    assertTrue(out.contains(head(Caution.COATS)), out);
  }

  @Test
  void aPlanSaysThemInBriefAndWhereTheirSourcesAre() {
    String out = Shell.run("plan", "demo", "--schedules", "1").done().out();
    assertEquals(out.indexOf("Follow your local"), out.lastIndexOf("Follow your local"));
    assertTrue(out.contains("\"strickle cautions\" says why"), out);
  }

  @Test
  void jsonHoldsEachWithItsSource() {
    String out = Shell.run("cautions", "demo", "--json").done().out();
    assertTrue(out.contains("\"format\": \"strickle-cautions/1\""), out);
    assertTrue(out.contains("\"caution\": \"wet cement\""), out);
    assertTrue(out.contains("\"source\": \"21 CFR 175.300(a)"), out);
    assertTrue(out.contains("\"follow\": \"Follow your local codes"), out);
  }

  @Test
  void aRouteThatMakesNoSenseIsAdviceAndNoFault() {
    String json =
        Shell.example(
            "\"after\": {\"wait\": \"cure\", \"hours\": 120}",
            "\"after\": " + "{\"wait\": \"rest\", \"hours\": 1}");
    Path book = Shell.file(folder, "book.json", json);
    String out = Shell.run("check", book).done().out();
    assertTrue(out.contains(" can be planned: "), out);
    assertTrue(out.contains("Finishing order, as advice; nothing is refused:"), out);
    assertTrue(
        out.contains("  $.pieces[0].route[1]: \"first seal coat\" may come 1 h out of the"), out);
  }

  @Test
  void stepsWithUnknownWordsAreNamed() {
    String json = Shell.example("wet sand the rim", "ponder the rim");
    String out = Shell.run("check", Shell.file(folder, "book.json", json)).done().out();
    assertTrue(out.contains("words are not known: \"ponder the rim\""), out);
  }

  private static String head(Caution caution) {
    String title = caution.title();
    return "\n" + title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1) + "\n";
  }
}
