package strickle.book;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SolidTest {

  private static List<Fault> faults(Executable making) {
    return assertThrows(Faulty.class, making).faults();
  }

  private static void assertFaulty(Executable making, String... paths) {
    assertEquals(List.of(paths), faults(making).stream().map(Fault::path).toList());
  }

  @Test
  void everyLengthThatCannotBeIsToldAtOnce() {
    double infinite = Double.POSITIVE_INFINITY;
    assertFaulty(() -> new Solid.Box(0, -1, Double.NaN), ".lengthMm", ".widthMm", ".heightMm");
    assertFaulty(() -> new Solid.Cylinder(infinite, 100_001), ".radiusMm", ".heightMm");
    assertFaulty(
        () -> new Solid.ConeFrustum(-1, -1, 0), ".bottomRadiusMm", ".topRadiusMm", ".heightMm");
    assertFaulty(
        () -> new Solid.PyramidFrustum(-1, Double.NaN, infinite, 1, 0),
        ".bottomLengthMm",
        ".bottomWidthMm",
        ".topLengthMm",
        ".heightMm");
    assertFaulty(() -> new Solid.SphericalCap(0, 0), ".sphereRadiusMm", ".heightMm");
    assertFaulty(() -> new Solid.Hemisphere(0), ".radiusMm");
    assertFaulty(() -> new Solid.Torus(0, 0), ".ringRadiusMm", ".tubeRadiusMm");
    assertFaulty(() -> new Solid.Ellipsoid(0, 0, 0), ".semiAMm", ".semiBMm", ".semiCMm");
  }

  @Test
  void aConeMayHaveOnePointButNotTwo() {
    assertDoesNotThrow(() -> new Solid.ConeFrustum(50, 0, 80));
    assertDoesNotThrow(() -> new Solid.ConeFrustum(0, 50, 80));
    assertFaulty(() -> new Solid.ConeFrustum(0, 0, 80), ".bottomRadiusMm");
  }

  @Test
  void aPyramidMayHaveOnePointButNotTwo() {
    assertDoesNotThrow(() -> new Solid.PyramidFrustum(100, 50, 0, 0, 80));
    assertDoesNotThrow(() -> new Solid.PyramidFrustum(0, 0, 100, 50, 80));
    assertFaulty(() -> new Solid.PyramidFrustum(0, 0, 0, 0, 80), ".bottomLengthMm");
    assertFaulty(() -> new Solid.PyramidFrustum(100, 0, 50, 0, 80), ".bottomLengthMm");
  }

  @Test
  void thePyramidFormulaIsOnlyForEndsOfTheSameProportions() {
    assertDoesNotThrow(() -> new Solid.PyramidFrustum(100, 50, 80, 40, 60));
    assertFaulty(() -> new Solid.PyramidFrustum(100, 50, 80, 50, 60), ".topWidthMm");
    assertFaulty(() -> new Solid.PyramidFrustum(100, 50, 50, 0, 60), ".topWidthMm");
    Fault turned = faults(() -> new Solid.PyramidFrustum(100, 50, 40, 80, 60)).get(0);
    assertEquals("80", turned.found());
    assertTrue(turned.right().contains("same proportions"), turned.right());
  }

  @Test
  void endsMayBeAsUnlikeAsRoundedMeasuresAre() {
    // 100 : 130 is 77 : 100.1; a tenth of a millimetre is rounding, a whole one is not.
    assertDoesNotThrow(() -> new Solid.PyramidFrustum(100, 130, 77, 100, 60));
    assertFaulty(() -> new Solid.PyramidFrustum(100, 130, 77, 99, 60), ".topWidthMm");
  }

  @Test
  void aCapIsNoHigherThanItsSphere() {
    assertDoesNotThrow(() -> new Solid.SphericalCap(50, 100));
    Fault fault = faults(() -> new Solid.SphericalCap(50, 100.5)).get(0);
    assertEquals(new Fault(".heightMm", "100.5", "at most the sphere's diameter, 100"), fault);
  }

  @Test
  void aTubeIsNoThickerThanItsRing() {
    assertDoesNotThrow(() -> new Solid.Torus(60, 60));
    assertFaulty(() -> new Solid.Torus(60, 60.5), ".tubeRadiusMm");
  }

  @Test
  void aPartOfAShapeHasASolid() {
    assertFaulty(() -> new ShapePart(null, false), ".solid");
  }
}
