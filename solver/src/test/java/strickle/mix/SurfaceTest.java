package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.ShapePart;
import strickle.book.Solid;

class SurfaceTest {

  private static final double TINY = 1e-9;

  @Test
  void aBoxHasSixSides() {
    Faces faces = Surface.of(new Solid.Box(200, 150, 25));
    assertEquals(2 * (200 * 150 + 200 * 25 + 150 * 25), faces.allMm2(), TINY);
    assertEquals(30_000, faces.openingMm2());
  }

  @Test
  void aCylinderIsAConeFrustumOfEqualEnds() {
    assertSame(
        Surface.of(new Solid.Cylinder(50, 100)), Surface.of(new Solid.ConeFrustum(50, 50, 100)));
  }

  @Test
  void aBoxIsAPyramidFrustumOfEqualEnds() {
    assertSame(
        Surface.of(new Solid.Box(80, 40, 60)),
        Surface.of(new Solid.PyramidFrustum(80, 40, 80, 40, 60)));
  }

  @Test
  void aWholeConeHasTheSideOfItsSlant() {
    // A 3-4-5 triangle turned round: pi r s + pi r².
    assertEquals(Math.PI * 30 * 50, Surface.of(new Solid.ConeFrustum(30, 0, 40)).sideMm2(), TINY);
  }

  @Test
  void aSquarePyramidHasFourSlantedTriangles() {
    // Half the base 30, height 40, slant 50: four times 60 x 50 / 2.
    Faces faces = Surface.of(new Solid.PyramidFrustum(60, 60, 0, 0, 40));
    assertEquals(4 * 60 * 50 / 2.0, faces.sideMm2(), TINY);
    assertEquals(0, faces.topMm2());
  }

  @Test
  void aCapAsHighAsItsRadiusIsHalfASphere() {
    assertSame(Surface.of(new Solid.Hemisphere(75)), Surface.of(new Solid.SphericalCap(75, 75)));
  }

  @Test
  void aWholeCapIsASphereAndSoIsARoundEllipsoid() {
    double sphere = 4 * Math.PI * 60 * 60;
    assertEquals(sphere, Surface.of(new Solid.SphericalCap(60, 120)).allMm2(), sphere * TINY);
    assertEquals(sphere, Surface.of(new Solid.Ellipsoid(60, 60, 60)).allMm2(), sphere * 1e-6);
  }

  @Test
  void anEllipsoidOfRevolutionAgreesWithItsClosedFormula() {
    // Prolate spheroid, 2 pi a² (1 + c/(a e) asin e), e² = 1 - a²/c²: value from memory.
    for (double c : new double[] {61, 80, 150, 600}) {
      double e = Math.sqrt(1 - 60 * 60 / (c * c));
      double expected = 2 * Math.PI * 60 * 60 * (1 + c / (60 * e) * Math.asin(e));
      for (Solid solid :
          List.of(
              new Solid.Ellipsoid(60, 60, c),
              new Solid.Ellipsoid(60, c, 60),
              new Solid.Ellipsoid(c, 60, 60))) {
        assertEquals(expected, Surface.of(solid).allMm2(), expected * 2e-6, solid.toString());
      }
    }
  }

  @Test
  void aRingIsATubeBentRound() {
    assertEquals(
        2 * Math.PI * 15 * 2 * Math.PI * 60, Surface.of(new Solid.Torus(60, 15)).allMm2(), 1e-6);
  }

  @Test
  void theBallIsTheSolidOfLeastSurface() {
    Random random = new Random(5);
    for (int i = 0; i < 20; i++) {
      Solid solid =
          new Solid.Ellipsoid(
              20 + 80 * random.nextDouble(),
              20 + 80 * random.nextDouble(),
              20 + 80 * random.nextDouble());
      double radius = Math.cbrt(Volume.ml(solid) * 1000 * 3 / 4 / Math.PI);
      assertTrue(Surface.of(solid).allMm2() >= 4 * Math.PI * radius * radius * (1 - 1e-6));
    }
  }

  @Test
  void aPotIsItsOutsideItsInsideAndItsRim() {
    ShapePart outer = new ShapePart(new Solid.Cylinder(60, 100), false);
    ShapePart inner = new ShapePart(new Solid.Cylinder(50, 90), true);
    double outside = 2 * Math.PI * 60 * 100 + Math.PI * 60 * 60;
    double inside = 2 * Math.PI * 50 * 90 + Math.PI * 50 * 50;
    double rim = Math.PI * (60 * 60 - 50 * 50);
    assertEquals(outside + inside + rim, Surface.mm2(List.of(outer, inner)), 1e-6);
  }

  @Test
  void aBowlOfHalfSpheresIsTwoHalvesAndARim() {
    ShapePart outer = new ShapePart(new Solid.Hemisphere(75), false);
    ShapePart inner = new ShapePart(new Solid.Hemisphere(65), true);
    double expected = Math.PI * (2 * 75 * 75 + 2 * 65 * 65 + 75 * 75 - 65 * 65);
    assertEquals(expected, Surface.mm2(List.of(outer, inner)), 1e-6);
  }

  @Test
  void aHollowThatOpensNowhereIsRefused() {
    ShapePart outer = new ShapePart(new Solid.Box(100, 100, 100), false);
    ShapePart inner = new ShapePart(new Solid.Ellipsoid(10, 10, 10), true);
    Faulty faulty = assertThrows(Faulty.class, () -> Surface.mm2(List.of(outer, inner)));
    assertEquals("[1]", faulty.faults().get(0).path());
  }

  @Test
  void aHollowAloneIsRefused() {
    ShapePart hollow = new ShapePart(new Solid.Box(100, 100, 100), true);
    assertThrows(Faulty.class, () -> Surface.mm2(List.of(hollow)));
    assertThrows(Faulty.class, () -> Surface.mm2(List.of()));
  }

  @Test
  void theMeshOfACylinderAgreesWithItsFormulaWithinItsFacets() {
    // Flat sides between points on the circle: ends (n/2pi) sin(2pi/n), wall (n/pi) sin(pi/n).
    int n = 96;
    Faces faces = Surface.of(new Solid.Cylinder(50, 100));
    double ends = n / (2 * Math.PI) * Math.sin(2 * Math.PI / n);
    double wall = n / Math.PI * Math.sin(Math.PI / n);
    double expected = ends * (faces.bottomMm2() + faces.topMm2()) + wall * faces.sideMm2();
    StlMesh mesh = StlMesh.read(Stl.text(Stl.cylinder(50, 100, n)));
    assertEquals(expected, mesh.areaMm2(LengthUnit.MM), expected * TINY);
    assertEquals(faces.allMm2(), expected, faces.allMm2() * 1e-3);
  }

  @Test
  void theSurfaceOfAMeshInInchesIsSoManySquareInches() {
    // Three right triangles of 1/2 and an equilateral one with sides of √2: √3/2.
    StlMesh mesh = StlMesh.read(Stl.text(Stl.tetrahedron(10, -7, 3)));
    double units = 1.5 + Math.sqrt(3) / 2;
    assertEquals(units, mesh.areaMm2(LengthUnit.MM), 1e-12);
    assertEquals(units * 25.4 * 25.4, mesh.areaMm2(LengthUnit.INCH), 1e-9);
  }

  private static void assertSame(Faces one, Faces other) {
    assertEquals(one.bottomMm2(), other.bottomMm2(), TINY);
    assertEquals(one.topMm2(), other.topMm2(), TINY);
    assertEquals(one.sideMm2(), other.sideMm2(), TINY);
  }

  @Test
  void aHollowThatItsBodyCannotHoldIsRefused() {
    Solid body = new Solid.Cylinder(60, 100);
    assertTrue(found(body, new Solid.Cylinder(70, 90)).contains("through the wall by 10.0 mm"));
    assertTrue(found(body, new Solid.Cylinder(50, 110)).contains("through the floor by 10.0 mm"));
    assertTrue(found(new Solid.Torus(60, 10), new Solid.Box(90, 90, 90)).contains("taken away"));
    // Two of them together are more than the body, though each would go in.
    ShapePart half = new ShapePart(new Solid.Cylinder(50, 90), true);
    List<ShapePart> shape = List.of(new ShapePart(body, false), half, half);
    assertTrue(
        assertThrows(Faulty.class, () -> Surface.mm2(shape))
            .faults()
            .get(0)
            .found()
            .contains("taken away"));
  }

  private static String found(Solid body, Solid hollow) {
    List<ShapePart> shape = List.of(new ShapePart(body, false), new ShapePart(hollow, true));
    return assertThrows(Faulty.class, () -> Surface.mm2(shape)).faults().get(0).found();
  }
}
