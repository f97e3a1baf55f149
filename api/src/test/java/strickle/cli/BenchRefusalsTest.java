package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is wrong with a volume, a batch, a ballast, a curing, a drying or a coat is told of the
 * option that was typed, with its value and what would be right.
 */
class BenchRefusalsTest {

  private static final String MIX = " --dry x:parts=1,density=3,cement=50 --water percent=20";
  private static final String BATCH = "batch --volume-ml 500";

  @TempDir Path folder;

  private static Shell.Result refused(String words) {
    Shell.Result result =
        Shell.run((Object[]) words.replace("MIX", MIX.strip()).replace("BATCH", BATCH).split(" +"));
    assertEquals(Outcome.WRONG, result.code(), result.err());
    assertEquals("", result.out());
    return result;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "volume --add box:length=0,width=5,height=5 | --add box.length | '\"0\"; right would be a"
            + " length above 0, at most 100000 mm'",
        "volume --add box:length=-5,width=5,height=5 | --add box.length | '\"-5\"; right would be"
            + " a positive length'",
        "volume --add hemisphere:diameter=0 | --add hemisphere.diameter | a radius above 0",
        "volume --add hemisphere:radius=99999999999 | --add hemisphere.radius | a smaller length",
        "volume --add pyramid-frustum:bottom-length=5,bottom-width=4,top-length=3,top-width=3,"
            + "height=5 | --add pyramid-frustum.top-width | as a pyramid frustum has",
        "volume --outer hemisphere:radius=75 --inner hemisphere:radius=75 | --inner | touches the"
            + " wall and leaves it no thickness",
        "volume --poured-grams 5 --density 0 | --density | from 200 to 5000 kg/m³",
        "volume --poured-grams 5 --density 9999999 | --density | from 200 to 5000 kg/m³",
        "BATCH --dry x:parts=0,density=3 --water percent=20 | --dry x.parts | a number above 0",
        "BATCH --dry x --water percent=20 | --dry x.parts | a number such as",
        "BATCH --water percent=20 | --dry | at least one dry material, such as sand",
        "BATCH --dry Sand:parts=1 --water percent=20 | --dry Sand | density=2.65",
        "BATCH MIX --pigment p:percent=3 | --pigment p | density=2.65",
        "BATCH MIX --dry x:parts=2,density=4 | --dry x | each material once",
        "BATCH MIX --pigment x:percent=2 | --pigment x | each material once",
        "BATCH --dry a/b:parts=1,density=3 --water percent=20 | --dry a/b | an id of 1 to 64",
        "BATCH --dry x:parts=1,density=3 --water percent=20,of=cement | --water.of | cement=45",
        "BATCH --dry x:parts=1,density=3 --water percent=20 --pigment p:percent=3,of=cement,"
            + "density=3 | --pigment p.of | cement=45",
        "BATCH MIX --density 0 | --density | from 200 to 5000 kg/m³",
        "BATCH MIX --step-grams 0 | --step-grams | '\"0\"; right would be a mass from 0.001 g'",
        "BATCH MIX --step-grams 5kg | --step-grams | weighs none of the 188 g of water; right"
            + " would be at most 187 g",
        "BATCH MIX --round-up-grams 2000000kg | --round-up-grams | at most 1000000 kg",
        "BATCH MIX --have nonesuch=5 | --have | 'a dry material or pigment of the mix: x'",
        "BATCH MIX --bag water=5 | --bag | 'a dry material or pigment of the mix: x'",
        "BATCH MIX --bag x=-5 | --bag x | a positive mass",
        "BATCH MIX --spare cup=5oz | --spare cup | a volume such as",
        "batch demo --mix basalt --mould doorstop --castings 2 | --castings | as in dish=3",
        "batch demo --mix basalt --mould doorstop=x | --mould doorstop | from 1 to 1000",
        "BATCH --past a:mass=5kg --past-filled-ml 2000 --past-left-grams 9kg | --past-left-grams"
            + " | found 9000 g; right would be less than the 5000 g",
        "BATCH --past a:mass=5kg --past-filled-ml 0 | --past-filled-ml | above 0",
        "BATCH --past a:mass=5kg --past-filled-ml 10 | --past-filled-ml | 200 to 5000 kg/m³",
        "BATCH --past a:mass=1g --past water:mass=1kg --past-filled-ml 500 | --past water | ten"
            + " times the 1 g",
        "BATCH --past p:mass=5kg,kind=pigment --past-filled-ml 2000 | --past | at least one",
        "ballast --displaced 5 --density 0 | --density | from 200 to 5000 kg/m³",
        "ballast --displaced 5 --density 20000000 | --density | from 200 to 5000 kg/m³",
        "ballast --core box:length=9999,width=9999,height=9999 --density 2250 | --core | at most"
            + " 10000 l",
        "ballast --displaced 5 --density 2250 --sealed-area 9000m2 --depth 99999 | --sealed-area"
            + " | at most 10000 l",
        "ballast --core cylinder:radius=50,height=80 --density 2250 --sealed --depth 0 | --depth"
            + " | a length above 0",
        "curing --at 20 --hours 0 | --hours | 'hours above 0, at most 87600'",
        "curing --spent 0@20 | --spent | 'hours above 0, at most 87600'",
        "curing --spent 6@99 | --spent | from -30 to 80 °C",
        "coat --area-m2 99999999 --leaf-mm 80 | --area-m2 | at most 1000000 m²",
        "coat --area-m2 1 --leaf-mm 0.001um | --leaf-mm | a length from 1 mm to 10 m",
        "coat --area-m2 1 --leaf-mm 80 --overlap-mm 79.9 | --overlap-mm | at least 1 mm less",
        "coat --area-m2 1 --leaf-mm 80 --density 1000 | --density | --uptake-grams-per-m2",
        "coat --area-m2 1 --leaf-mm 80 --coats 2 | --coats | a film or what soaks in",
        "coat --area-m2 1 --uptake-grams-per-m2 70 --overlap-mm 5 | --overlap-mm | --leaf-mm",
        "coat --area-m2 1 --uptake-grams-per-m2 70 --leaves-per-book 5 | --leaves-per-book |"
            + " --leaf-mm",
        "coat --area-m2 1 --solids-percent 40 | --dry-film-mm | found nothing",
        "coat --leaf-mm 80 --subtract hemisphere:radius=5 | --add | found nothing",
        "coat --leaf-mm 80 --add hemisphere:radius=5 --subtract torus:ring-radius=5,tube-radius=2"
            + " | --subtract torus | a flat face to open at"
      })
  void aRefusalNamesTheOptionThatWasTyped(String words, String path, String said) {
    Shell.Result result = refused(words);
    assertEquals(List.of(path), result.paths(), result.err());
    assertTrue(result.err().contains(said), result.err());
  }

  private static Stream<String> options() {
    return Stream.of(
        "volume --add box:length=VALUE,width=5,height=5",
        "volume --add hemisphere:radius=75 --subtract VALUE",
        "volume --outer VALUE --inner hemisphere:radius=5",
        "volume --outer hemisphere:radius=75 --inner VALUE",
        "volume --outer hemisphere:radius=75 --inner hemisphere:radius=65 --least-wall-mm VALUE",
        "volume --mesh VALUE --mesh-unit mm",
        "volume --water-grams VALUE",
        "volume --water-grams 5 --water-c VALUE",
        "volume --poured-grams VALUE --density 2000",
        "volume --poured-grams 5 --density VALUE",
        "batch --volume-ml VALUE MIX",
        "batch --volume-ml 5 --castings VALUE MIX",
        "BATCH MIX --waste VALUE",
        "BATCH MIX --air VALUE",
        "BATCH MIX --density VALUE",
        "BATCH MIX --step-grams VALUE",
        "BATCH MIX --round-up-grams VALUE",
        "BATCH MIX --have x=VALUE",
        "BATCH MIX --bag x=VALUE",
        "BATCH MIX --spare x=VALUE",
        "BATCH MIX --pigment p:percent=VALUE,density=4",
        "BATCH MIX --pigment p:percent=3,density=4,most=VALUE",
        "BATCH --dry x:parts=VALUE,density=3 --water percent=20",
        "BATCH --dry x:parts=1,density=VALUE --water percent=20",
        "BATCH --dry x:parts=1,density=3,cement=VALUE --water percent=20",
        "BATCH --dry x:parts=1,density=3 --water percent=VALUE",
        "BATCH --past x:mass=VALUE --past-filled-ml 500",
        "BATCH --past x:mass=1kg --past-filled-ml VALUE",
        "BATCH --past x:mass=1kg --past-filled-ml 500 --past-left-grams VALUE",
        "ballast --displaced VALUE --density 2250",
        "ballast --displaced 5 --density VALUE",
        "ballast --core VALUE --density 2250",
        "ballast --displaced 5 --density 2250 --mass VALUE",
        "ballast --displaced 5 --density 2250 --factor VALUE",
        "ballast --displaced 5 --density 2250 --depth VALUE",
        "ballast --displaced 5 --density 2250 --depth 50 --sealed-area VALUE",
        "ballast --depth 50 --density 2250 --wall VALUE",
        "curing --at 20 --hours VALUE",
        "curing --hours 16 --at VALUE",
        "curing --spent VALUE@20",
        "curing --spent 6@VALUE",
        "curing --age-days VALUE",
        "curing --age-days 7 --fck-mpa VALUE",
        "curing --age-days 7 --cement VALUE",
        "curing --hours 6 --at 20 --activation-kj VALUE",
        "curing --hours 6 --at 20 --activation-kelvin VALUE",
        "curing --hours 6 --at 20 --datum VALUE",
        "curing --log VALUE",
        "curing --records VALUE",
        "drying VALUE",
        "coat --area-m2 VALUE --leaf-mm 80",
        "coat --area-m2 1 --leaf-mm VALUE",
        "coat --area-m2 1 --leaf-mm 80 --overlap-mm VALUE",
        "coat --area-m2 1 --leaf-mm 80 --leaves-per-book VALUE",
        "coat --area-m2 1 --leaf-mm 80 --pieces VALUE",
        "coat --area-m2 1 --leaf-mm 80 --waste-percent VALUE",
        "coat --area-m2 1 --uptake-grams-per-m2 VALUE",
        "coat --area-m2 1 --uptake-grams-per-m2 7 --coats VALUE",
        "coat --area-m2 1 --uptake-grams-per-m2 7 --density VALUE",
        "coat --area-m2 1 --solids-percent VALUE --dry-film-mm 25um",
        "coat --area-m2 1 --solids-percent 40 --dry-film-mm VALUE");
  }

  @ParameterizedTest
  @MethodSource("options")
  void whatIsAbsurdIsRefusedWithItsValue(String words) {
    for (String value : List.of("1e99", "some", "99999999999", "-99999999999")) {
      Shell.Result result = refused(words.replace("VALUE", value));
      assertEquals(1, result.faults().size(), result.err());
      assertTrue(
          result.err().matches("(?s)(--|FILE).*: found .*; right would be .*"), result.err());
      assertTrue(result.err().contains(value), result.err());
      assertFalse(result.err().contains("bug"), result.err());
    }
  }

  @Test
  void aPieceThatDriedIsReadWithAScaleAndALimitThatCanBe() {
    Path file =
        Shell.file(
            folder,
            "d.csv",
            "day,mass\n0,1050\n1,1038.9\n2,1030.3\n4,1018.4\n7,1008.7\n9,1005.3\n");
    Shell.run("drying", file).done();
    for (String option : List.of("--limit", "--scale-step")) {
      for (String value : List.of("0", "-5", "some", "1e99", "99999999999")) {
        Shell.Result result = Shell.run("drying", file, option, value);
        assertEquals(List.of(option), result.paths(), result.err());
      }
    }
  }
}
