package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Volumes on the command line. Check values of the solids are derived from their formulas; cone and
 * general frustum formulas as read on geometry-formulas.com/frustum-cone, the others from memory.
 */
class VolumeCommandTest {

  /** The unit corner tetrahedron: 1/6, read at octave.sourceforge.io/matgeom, tetrahedronVolume. */
  private static final String TETRAHEDRON =
      "solid corner\n"
          + facet("0 0 0", "0 1 0", "1 0 0")
          + facet("0 0 0", "1 0 0", "0 0 1")
          + facet("0 0 0", "0 0 1", "0 1 0")
          + facet("1 0 0", "0 1 0", "0 0 1")
          + "endsolid corner\n";

  @TempDir Path folder;

  private static String facet(String a, String b, String c) {
    return "facet normal 0 0 0\nouter loop\nvertex "
        + String.join("\nvertex ", a, b, c)
        + "\nendloop\nendfacet\n";
  }

  private static double ml(Object... arguments) {
    String out = Shell.run(arguments).done().out();
    Matcher ml = Pattern.compile("\"volumeMl\": ([0-9.]+)").matcher(out);
    assertTrue(ml.find(), out);
    return Double.parseDouble(ml.group(1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.7500 | box:length=200,width=150,height=25",
        "0.785398 | cylinder:radius=50,height=100",
        "0.785398 | cylinder:diameter=10cm,height=100",
        "0.762360 | cone-frustum:bottom-radius=60,top-radius=50,height=80",
        "0.762360 | cone-frustum:bottom-diameter=100,top-diameter=120,height=80",
        "0.488000 | pyramid-frustum:bottom-length=100,bottom-width=100,top-length=80,top-width=80,"
            + "height=60",
        "0.435634 | spherical-cap:sphere-radius=100,height=40",
        "0.883573 | hemisphere:radius=75",
        "0.266479 | torus:ring-radius=60,tube-radius=15",
        "0.804248 | ellipsoid:semi-a=80,semi-b=60,semi-c=40",
        "16.387064 | box:length=10in,width=10in,height=10in"
      })
  void solidsHoldTheirPublishedVolumes(double litres, String solid) {
    double found = ml("volume", "--add", solid, "--json") / 1000;
    assertEquals(litres, found, 1e-6 * litres + 5e-7);
  }

  @Test
  void solidsAreAddedAndTakenAway() {
    double ml =
        ml(
            "volume",
            "--add",
            "box:length=100,width=100,height=50",
            "--add",
            "box:length=100,width=100,height=10",
            "--subtract",
            "cylinder:radius=20,height=60",
            "--json");
    assertEquals(600 - Math.PI * 400 * 60 / 1000, ml, 1e-6);
  }

  @Test
  void aVesselTellsItsWallAndFloor() {
    String out =
        Shell.run(
                "volume",
                "--outer",
                "cylinder:radius=60,height=100",
                "--inner",
                "cylinder:radius=52,height=88",
                "--least-wall-mm",
                "8")
            .done()
            .out();
    assertTrue(out.startsWith("volume  383.4 ml\n"), out);
    assertTrue(out.contains("\nwall    8.0 mm at its thinnest\nfloor   12.0 mm\n"), out);
  }

  @Test
  void aVesselThatIsTooThinOrComesThroughIsRefused() {
    Object[] thin = {
      "volume", "--outer", "hemisphere:radius=75", "--inner", "hemisphere:radius=70"
    };
    Shell.run(thin).done();
    Shell.Result refused =
        Shell.run("volume", "--outer", thin[2], "--inner", thin[4], "--least-wall-mm", "1/4 in");
    assertEquals(Outcome.WRONG, refused.code());
    assertTrue(refused.err().contains("--inner: found a wall or floor of 5.0 mm"), refused.err());
    Shell.Result through =
        Shell.run("volume", "--outer", thin[4], "--inner", "hemisphere:radius=71");
    assertEquals(List.of("--inner"), through.paths());
    assertTrue(through.err().contains("comes through the wall by 1.0 mm"), through.err());
  }

  @Test
  void aClosedMeshHoldsASixthInMillimetresOrInches() {
    Path file = Shell.file(folder, "corner.stl", TETRAHEDRON);
    double mm = ml("volume", "--mesh", file, "--mesh-unit", "mm", "--json");
    assertEquals(1 / 6.0 / 1000, mm, 1e-12);
    double inch = ml("volume", "--mesh", file, "--mesh-unit", "inch", "--json");
    // The factor 16387.064 mm³ in a cubic inch follows from 25.4 mm (16 CFR 500.19).
    assertEquals(16387.064 / 6 / 1000, inch, 1e-8);
  }

  /** The same tetrahedron as binary STL: a header of 80 bytes, a count, 50 bytes a triangle. */
  private static byte[] binary(int triangles) {
    float[][] corners = {
      {0, 0, 0, 0, 1, 0, 1, 0, 0},
      {0, 0, 0, 1, 0, 0, 0, 0, 1},
      {0, 0, 0, 0, 0, 1, 0, 1, 0},
      {1, 0, 0, 0, 1, 0, 0, 0, 1}
    };
    ByteBuffer file = ByteBuffer.allocate(84 + 50 * triangles).order(ByteOrder.LITTLE_ENDIAN);
    file.putInt(80, triangles);
    for (int i = 0; i < triangles; i++) {
      file.position(84 + 50 * i + 12);
      for (float one : corners[i]) {
        file.putFloat(one);
      }
    }
    return file.array();
  }

  @Test
  void aBinaryMeshHoldsTheSameAsItsText() throws IOException {
    // 1/6: octave.sourceforge.io/matgeom, tetrahedronVolume, read.
    Path file = Files.write(folder.resolve("binary.stl"), binary(4));
    assertEquals(
        1 / 6.0 / 1000, ml("volume", "--mesh", file, "--mesh-unit", "mm", "--json"), 1e-12);
    Path open = Files.write(folder.resolve("open.stl"), binary(3));
    Shell.Result refused = Shell.run("volume", "--mesh", open, "--mesh-unit", "mm");
    assertTrue(refused.err().contains("open edges: 3 of 6"), refused.err());
    assertFalse(refused.err().contains("volumeMl"), refused.err());
    byte[] cut = Arrays.copyOf(binary(4), 200);
    Path half = Files.write(folder.resolve("half.stl"), cut);
    Shell.Result cutOff = Shell.run("volume", "--mesh", half, "--mesh-unit", "mm");
    assertEquals(List.of("--mesh"), cutOff.paths());
    assertTrue(cutOff.err().contains("200 bytes"), cutOff.err());
  }

  @Test
  void anOpenMeshIsRefusedWithItsOpenEdges() {
    String open = TETRAHEDRON.replace(facet("1 0 0", "0 1 0", "0 0 1"), "");
    Path file = Shell.file(folder, "open.stl", open);
    Shell.Result refused = Shell.run("volume", "--mesh", file, "--mesh-unit", "mm");
    assertEquals(Outcome.WRONG, refused.code());
    assertEquals(List.of("--mesh"), refused.paths());
    assertTrue(refused.err().contains("open edges: 3 of 6"), refused.err());
  }

  @Test
  void theUnitOfAMeshIsAskedFor() {
    Path file = Shell.file(folder, "corner.stl", TETRAHEDRON);
    assertEquals(List.of("--mesh-unit"), Shell.run("volume", "--mesh", file).paths());
    Shell.Result wrong = Shell.run("volume", "--mesh", file, "--mesh-unit", "cm");
    assertEquals(List.of("--mesh-unit"), wrong.paths());
    Path none = folder.resolve("none.stl");
    assertEquals(
        List.of("--mesh"), Shell.run("volume", "--mesh", none, "--mesh-unit", "mm").paths());
  }

  @Test
  void waterFillsByItsDensity() {
    // Density of water at 20 °C 998.207 kg/m³: CIPM formula, value from memory.
    double ml = ml("volume", "--water-grams", "998.207", "--json");
    assertEquals(1000, ml, 0.001);
    double same = ml("volume", "--water-grams", "998.207", "--water-c", "68 F", "--json");
    assertEquals(ml, same, 1e-9);
    assertEquals(
        List.of("--water-c"),
        Shell.run("volume", "--water-grams", "1 kg", "--water-c", "60").paths());
  }

  @Test
  void aKnownPourFillsMassOverDensity() {
    double ml = ml("volume", "--poured-grams", "145 lb", "--density", "145lb/ft3", "--json");
    assertEquals(28316.846592, ml, 1e-4);
  }

  @Test
  void customaryUnitsAreWrittenWhenAskedFor() {
    String out =
        Shell.run("volume", "--add", "box:length=7in,width=11in,height=3in", "--units", "us")
            .done()
            .out();
    // 231 in³ are a gallon (NIST, second-hand).
    assertTrue(out.startsWith("volume  1.000 gal\n"), out);
  }

  @Test
  void everythingWrongIsToldAtOnce() {
    Shell.Result refused =
        Shell.run(
            "volume",
            "--add",
            "box:length=2 fl oz,width=-3,depth=4",
            "--add",
            "cube:side=3",
            "--subtract",
            "cylinder:radius=1,diameter=2",
            "--units",
            "imperial");
    assertEquals(Outcome.WRONG, refused.code());
    assertEquals(5, refused.faults().size(), refused.err());
    assertTrue(refused.err().contains("one of length, width, height"), refused.err());
    assertTrue(refused.err().contains("there are box, cylinder,"), refused.err());
    assertTrue(refused.err().contains("a radius and a diameter"), refused.err());
  }

  @Test
  void noWayAndSeveralWaysAreRefused() {
    assertEquals(List.of("volume"), Shell.run("volume").paths());
    Shell.Result two = Shell.run("volume", "--add", "hemisphere:radius=3", "--water-grams", "3");
    assertTrue(two.err().contains("several ways at once"), two.err());
  }

  @Test
  void solidsThatLeaveNothingAreRefused() {
    Shell.Result refused =
        Shell.run("volume", "--add", "hemisphere:radius=3", "--subtract", "hemisphere:radius=4");
    assertEquals(List.of("--subtract"), refused.paths());
  }
}
