package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BallastCommandTest {

  private static final String FRUSTUM = "cone-frustum:bottom-radius=50,top-radius=60,height=80";

  @TempDir Path folder;

  @Test
  void aHungCoreIsHeldDownByItsLift() {
    // Derived: frustum R60 r50 h80 mm, 2250 kg/m³, core 100 g; 0.1 %.
    Shell.Result result =
        Shell.run("ballast", "--core", FRUSTUM, "--mass", "100", "--density", "2250", "--json");
    assertEquals(1715.3, number(result, "displacedGrams"), 1.7);
    assertEquals(16.821, number(result, "grossNewtons"), 0.017);
    assertEquals(15.841, number(result, "netNewtons"), 0.016);
    assertEquals(2420, number(result, "ballastGrams"), 5);
  }

  @Test
  void aCoreSealedOnTheFloorIsLiftedByItsWiderTopOnly() {
    // Derived: the same core sealed on its r50 base, gross 2.958 N.
    Shell.Result solid =
        Shell.run("ballast", "--core", FRUSTUM, "--density", "2250", "--sealed", "--json");
    assertEquals(2.958, number(solid, "grossNewtons"), 0.003);
    Shell.Result area =
        Shell.run(
            "ballast",
            "--displaced",
            "762.360",
            "--density",
            "2.25 g/ml",
            "--sealed-area",
            "78.5398 cm2",
            "--depth",
            "80",
            "--json");
    assertEquals(2.958, number(area, "grossNewtons"), 0.003);
  }

  @Test
  void aStraightSealedCoreStaysDownByItself() {
    String out =
        Shell.run(
                "ballast",
                "--core",
                "cylinder:radius=50,height=80",
                "--density",
                "2250",
                "--mass",
                "1",
                "--sealed")
            .done()
            .out();
    assertTrue(out.replaceAll(" +", " ").contains("ballast, 1.5 times that 0.0 g\n"), out);
    assertTrue(out.contains("It stays down by itself"), out);
  }

  @Test
  void fourFeetOfMixPressWithSixHundredPoundsOnASquareFoot() {
    // dhglabe.com/blog/concrete-formwork-under-pressure: 150 lb/ft³ x 4 ft = 600 lb/ft², 28.73 kPa.
    String[] words = {"ballast", "--depth", "4 ft", "--density", "150 lb/ft3"};
    Shell.Result json = Shell.run(words[0], words[1], words[2], words[3], words[4], "--json");
    assertEquals(28_730, number(json, "pascals"), 0.005 * 28_730);
    String us =
        Shell.run(words[0], words[1], words[2], words[3], words[4], "--units", "us").done().out();
    assertTrue(us.contains("600.0 lb/ft²"), us);
    assertTrue(us.contains("slump above 175 mm or 7 in"), us);
    // Second-hand: 23.6 kN/m³ x 3 m is about 70 kPa; 2400 x 9.81 x 3 = 70.63.
    Shell.Result deep = Shell.run("ballast", "--depth", "3 m", "--density", "2400", "--json");
    assertEquals(70_630, number(deep, "pascals"), 0.005 * 70_630);
    Shell.Result mould = Shell.run("ballast", "--depth", "200", "--density", "2250", "--json");
    // Derived: 4.41 kPa, 0.5 %.
    assertEquals(4410, number(mould, "pascals"), 0.005 * 4410);
  }

  @Test
  void theSameCoreInEitherSystemNeedsTheSame() {
    Shell.Result metric =
        Shell.run(
            "ballast",
            "--displaced",
            "29.5735295625 ml",
            "--mass",
            "28.349523125",
            "--density",
            "2000",
            "--json");
    Shell.Result us =
        Shell.run(
            "ballast", "--displaced", "1 fl oz", "--mass", "1 oz", "--density", "2000", "--json");
    assertEquals(metric.done().out(), us.done().out());
  }

  @Test
  void aBooksCoresAreAllTold() {
    // The page on the files, run L1-1: 7872 g.
    Path book = Shell.file(folder, "book.json", Shell.example());
    String out = Shell.run("ballast", book).done().out();
    assertTrue(out.contains("planter-slate  slate   2600.0 ml  51.466 N        7872.2 g\n"), out);
    assertEquals(7872, number(Shell.run("ballast", book, "--json"), "ballastGrams"), 0.5);
  }

  @Test
  void ballastThatIsHeavyToLiftIsCautionedAgainst() {
    // From the floor 8.82 kg may be lifted, by the equation of NIOSH; told from 0.8 of it on.
    String heavy =
        Shell.run("ballast", "--displaced", "3600", "--mass", "140", "--density", "2115")
            .done()
            .out();
    assertTrue(heavy.contains("(the ballast, 11.2 kg (24.7 lb), 1.3 x the limit"), heavy);
    assertTrue(heavy.contains("source: NIOSH lifting equation"), heavy);
    String light = Shell.run("ballast", "--displaced", "600", "--density", "2115").done().out();
    assertFalse(light.contains("Take care"), light);
  }

  @ParameterizedTest
  @CsvSource({
    "--density 2250, --displaced",
    "--displaced 5, --density",
    "--displaced 5 --density 0, --density",
    "--displaced 5oz --density 2250, --displaced",
    "--displaced 5 --core box --density 2250, --core.length",
    "--displaced 5 --density 2250 --sealed, --core",
    "--displaced 5 --density 2250 --sealed-area 5cm2, --depth",
    "--displaced 5 --density 2250 --factor 0.5, --factor",
    "--density 2250 --wall 5, --displaced",
    "--core hemisphere:radius=50 --density 2250 --sealed, --core",
    "'--core cylinder:radius=5,height=80 --density 2250 --sealed --depth 79', --depth",
    "--displaced 5 --core hemisphere:radius=50 --density 2250, --displaced",
    "demo --displaced 5 --density 2250, BOOK",
  })
  void whatDoesNotGoTogetherIsTold(String words, String path) {
    Shell.Result result = Shell.run((Object[]) ("ballast " + words).split(" "));
    assertEquals(2, result.code(), result.err());
    assertTrue(result.paths().contains(path), result.err());
    assertTrue(result.err().contains("; right would be "), result.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ballast", "ballast --units us", "ballast --json"})
  void somethingToWorkOutIsNeeded(String words) {
    Shell.Result result = Shell.run((Object[]) words.split(" "));
    assertEquals(List.of("ballast"), result.paths());
  }

  /** The number of the first field of that name. */
  static double number(Shell.Result result, String field) {
    String out = result.done().out();
    int at = out.indexOf('"' + field + "\": ");
    assertTrue(at >= 0, field + " in " + out);
    String rest = out.substring(at + field.length() + 4);
    return Double.parseDouble(rest.split("[,}\\s]", 2)[0]);
  }

  @Test
  void aHeavyCoreThatHangsStaysDownAndNothingIsSaidOfSealing() {
    String out =
        Shell.run(
                "ballast",
                "--core",
                "box:length=50,width=50,height=50",
                "--density",
                "2250",
                "--mass",
                "1kg")
            .done()
            .out();
    assertTrue(out.contains("It stays down by itself.\n"), out);
    assertTrue(out.contains("its own weight holds it, with"), out);
    assertFalse(out.contains("sealed"), out);
  }

  @Test
  void aSealedCoreThatNarrowsUpwardIsPressedDown() {
    String out =
        Shell.run(
                "ballast",
                "--core",
                "cone-frustum:bottom-radius=50,top-radius=30,height=80",
                "--density",
                "2250",
                "--mass",
                "1",
                "--sealed")
            .done()
            .out();
    assertTrue(out.contains("the mix presses it down with"), out);
    assertTrue(out.contains("and with its own weight, with"), out);
    assertFalse(out.contains(" -"), out);
    assertTrue(out.contains("as long as no mix gets under what is sealed"), out);
  }
}
