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

class CoatCommandTest {

  private static double figure(String name, String words) {
    String out = Shell.run((Object[]) (words + " --json").split(" ", -1)).done().out();
    Matcher found = Pattern.compile("\"" + name + "\": (-?[0-9.]+)").matcher(out);
    assertTrue(found.find(), out);
    return Double.parseDouble(found.group(1));
  }

  @Test
  void theSpreadingRateIsThatOfThePublishedSheet() {
    // Spreading rate sheet (scribd.com/document/343849341): 65 % at 125 µm is 5.2 m²/l.
    String words = "coat --area-m2 1 --solids-percent 65 --dry-film-mm 125um";
    assertEquals(5.2, figure("m2PerLitre", words), 1e-9);
  }

  @Test
  void theSpreadingRateInFeetAndGallonsIsThatOfTheSheet() {
    // Same sheet: 65 % at 5 mil is 208.5 ft²/gal.
    String words = "coat --area-m2 1ft2 --solids-percent 65 --dry-film-mm 5mil --units us";
    String out = Shell.run((Object[]) words.split(" ", -1)).done().out();
    assertTrue(out.contains("rate    208.5 ft²/gal"), out);
  }

  @Test
  void theWetFilmIsThatOfThePublishedSheet() {
    // scribd.com/document/476982351: 71 % at 125 µm is 176 µm wet.
    String words = "coat --area-m2 1 --solids-percent 71 --dry-film-mm 0.125";
    assertEquals(176, figure("wetMicrons", words), 0.5);
  }

  @Test
  void litresGrowWithAreaCoatsAndLoss() {
    // Computed from the sheet's formula: 0.2143 l.
    String words =
        "coat --area-m2 0.6 --pieces 2 --coats 2 --solids-percent 40 --dry-film-mm 25um"
            + " --waste-percent 30";
    assertEquals(0.2143, figure("litres", words), 5e-5);
  }

  @Test
  void aSheetOfLeafMeasuresWhatIsPublished() {
    // Books of 25, 3 1/4 in. square (cool.conservation-us.org/don/dt/dt1585.html): 68.145 cm².
    String words = "coat --area-m2 0.17036 --leaf-mm 3.25in";
    assertEquals(68.145, figure("sheetCm2", words), 5e-4);
    assertEquals(25, figure("sheets", words));
    assertEquals(1, figure("books", words));
  }

  @Test
  void overlapAndWasteCostSheets() {
    // Computed: 0.05 m², 80 mm, 5 mm overlap, 10 % waste: 10 sheets, 12.1 % lost to the overlap.
    String words = "coat --area-m2 0.05 --leaf-mm 80 --overlap-mm 5 --waste-percent 10";
    String out = Shell.run((Object[]) words.split(" ", -1)).done().out();
    assertTrue(out.contains("leaf    10 sheets, 1 book; 12.1 % of each lies on the next"), out);
  }

  @Test
  void areasAreReadOffSolids() {
    String pot =
        "coat --add cylinder:radius=60,height=100 --subtract cylinder:radius=50,height=90"
            + " --uptake-grams-per-m2 75";
    double outside = 2 * Math.PI * 60 * 100 + 2 * Math.PI * 60 * 60;
    double m2 = (outside + 2 * Math.PI * 50 * 90) / 1e6;
    assertEquals(m2, figure("areaM2", pot), 1e-9);
    assertEquals(75 * m2, figure("grams", pot), 1e-6);
    assertEquals(75 * m2 / 1.5, figure("ml", pot + " --density 1500"), 1e-6);
  }

  @Test
  void anUptakeMayBeACustomaryMassOnAnArea() {
    // 0.25 oz are 7.087 g, a square foot is 0.09290304 m²: 76.29 g/m² (exact factors).
    String words = "coat --area-m2 2ft2 --uptake-grams-per-m2 0.25oz/ft2";
    assertEquals(76.29, figure("gramsPerM2", words), 0.005);
    assertEquals(2 * 0.25 * 28.349523125, figure("grams", words), 1e-6);
    assertEquals(75, figure("gramsPerM2", words.replace("0.25oz/ft2", "75g/m2")), 1e-9);
    for (String wrong : List.of("1floz/ft2", "75/m2", "75g", "75g/m3", "0", "-1", "g/m2")) {
      Object[] command = words.replace("0.25oz/ft2", wrong).split(" ", -1);
      assertEquals(List.of("--uptake-grams-per-m2"), Shell.run(command).paths(), wrong);
    }
  }

  @Test
  void aCoatIsCautionedAgainstOnceWithItsSource() {
    String out = Shell.run("coat", "--area-m2", "1", "--uptake-grams-per-m2", "75").done().out();
    for (String words :
        List.of(
            "gloves of the kind the",
            "air the room while coats",
            "source: common practice, no source",
            "Follow your local codes and the product's sheet.")) {
      assertTrue(out.contains(words), out);
    }
    assertEquals(out.indexOf("Take care"), out.lastIndexOf("Take care"));
    String leaf = Shell.run("coat", "--area-m2", "0.05", "--leaf-mm", "80").done().out();
    assertFalse(leaf.contains("Take care"), leaf);
  }

  @ParameterizedTest
  @CsvSource({
    "coat --area-m2 1, coat",
    "coat --leaf-mm 80, coat",
    "coat --leaf-mm 80 --area-m2 1 --add hemisphere:radius=3, coat",
    "coat --leaf-mm 80 --area-m2 0, --area-m2",
    "coat --leaf-mm 80 --area-m2 3oz, --area-m2",
    "coat --leaf-mm 80 --area-m2 1 --overlap-mm 80, --overlap-mm",
    "coat --area-m2 1 --solids-percent 40, --dry-film-mm",
    "coat --area-m2 1 --dry-film-mm 25um, --solids-percent",
    "coat --area-m2 1 --dry-film-mm 25um --solids-percent 101, --solids-percent",
    "coat --area-m2 1 --uptake-grams-per-m2 0, --uptake-grams-per-m2",
    "coat --area-m2 1 --uptake-grams-per-m2 7 --coats 0, --coats",
    "coat --area-m2 1 --leaf-mm 80 --waste-percent 100, --waste-percent"
  })
  void whatNoCoatIsIsRefused(String words, String path) {
    Shell.Result refused = Shell.run((Object[]) words.split(" ", -1));
    assertEquals(2, refused.code());
    assertEquals(List.of(path), refused.paths(), refused.err());
  }

  @Test
  void aMeshNeedsItsFileAndItsUnit() {
    Shell.Result refused = Shell.run("coat", "--leaf-mm", "80", "--mesh", "no-such-bowl.stl");
    assertEquals(List.of("--mesh-unit", "--mesh"), refused.paths(), refused.err());
    Shell.Result unit = Shell.run("coat", "--leaf-mm", "80", "--mesh-unit", "mm");
    assertEquals(List.of("--mesh"), unit.paths(), unit.err());
  }
}
