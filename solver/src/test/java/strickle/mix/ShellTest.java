package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Solid;
import strickle.book.Solid.Box;
import strickle.book.Solid.ConeFrustum;
import strickle.book.Solid.Cylinder;
import strickle.book.Solid.Hemisphere;
import strickle.book.Solid.PyramidFrustum;
import strickle.book.Solid.SphericalCap;

/** Vessels; walls and floors follow from plane geometry. */
class ShellTest {

  @Test
  void aBowlIsTheOuterHemisphereLessTheInner() {
    // Derived: hemisphere R75 holds 0.883573 l; the volume of a shell is outer less inner.
    Shell bowl = Shell.of(new Hemisphere(75), new Hemisphere(65));
    assertEquals(883.573 - 2 * Math.PI * 65 * 65 * 65 / 3000, bowl.volumeMl(), 0.001);
    assertEquals(10, bowl.wallMm(), 1e-9);
    assertEquals(OptionalDouble.empty(), bowl.floorMm());
  }

  @Test
  void aTubHasWallsAndAFloor() {
    Shell tub = Shell.of(new Box(200, 150, 60), new Box(180, 124, 45));
    assertEquals(1800 - 180 * 124 * 45 / 1000.0, tub.volumeMl(), 1e-9);
    assertEquals(10, tub.wallMm(), 1e-9);
    assertEquals(15, tub.floorMm().orElseThrow(), 1e-9);
    assertEquals(10, tub.thinnestMm(), 1e-9);
  }

  @Test
  void aSlopingWallIsMeasuredSquareToItself() {
    // Sides sloping 3 in 4: 10 mm along the level are 8 mm through the wall.
    Shell pot = Shell.of(new ConeFrustum(50, 110, 80), new ConeFrustum(40 + 7.5, 100, 70));
    assertEquals(8, pot.wallMm(), 1e-9);
    assertEquals(10, pot.floorMm().orElseThrow(), 1e-9);
    Shell trough =
        Shell.of(
            new PyramidFrustum(100, 100, 220, 220, 80), new PyramidFrustum(95, 95, 200, 200, 70));
    assertEquals(8, trough.wallMm(), 1e-9);
  }

  @Test
  void aRingIsOpenBelowAsWell() {
    Shell ring = Shell.of(new Cylinder(50, 30), new Cylinder(40, 30));
    assertEquals(10, ring.wallMm(), 1e-9);
    assertEquals(OptionalDouble.empty(), ring.floorMm());
  }

  @Test
  void solidsOfDifferentKindsMakeAVesselToo() {
    Shell block = Shell.of(new Box(200, 160, 90), new Hemisphere(70));
    assertEquals(10, block.wallMm(), 1e-9);
    assertEquals(20, block.floorMm().orElseThrow(), 1e-9);
    // A box whose corner stands 50 mm from the axis.
    assertEquals(10, Shell.of(new Cylinder(60, 50), new Box(80, 60, 40)).wallMm(), 1e-9);
    // Two caps of equal spheres, 5 mm apart in depth: thinnest somewhere on the dome's edge.
    Shell dish = Shell.of(new SphericalCap(100, 40), new SphericalCap(100, 30));
    assertEquals(100 - Math.hypot(Math.sqrt(100 * 100 - 70 * 70), 60), dish.wallMm(), 1e-4);
  }

  @Test
  void anInnerSolidThatComesThroughIsRefused() {
    List<Solid> inner = List.of(new Cylinder(51, 40), new Cylinder(40, 51), new Box(80, 80, 9));
    for (Solid solid : inner) {
      Faulty faulty = assertThrows(Faulty.class, () -> Shell.of(new Cylinder(50, 50), solid));
      Fault fault = faulty.faults().get(0);
      assertEquals(".inner", fault.path());
      assertTrue(fault.found().contains("comes through the"), fault.found());
    }
  }

  @Test
  void anInnerSolidThatTouchesTheWallIsNotSaidToComeThroughByNothing() {
    for (double radius : new double[] {50, 50.0000001}) {
      Faulty faulty =
          assertThrows(
              Faulty.class, () -> Shell.of(new Cylinder(50, 50), new Cylinder(radius, 40)));
      assertEquals(
          "a solid that touches the wall and leaves it no thickness",
          faulty.faults().get(0).found());
    }
  }

  @Test
  void whatHasNoMouthIsRefused() {
    Faulty faulty =
        assertThrows(
            Faulty.class, () -> Shell.of(new Solid.Torus(60, 15), new Solid.Ellipsoid(10, 10, 10)));
    assertEquals(List.of(".outer", ".inner"), faulty.faults().stream().map(Fault::path).toList());
  }

  @Test
  void theThinnestWallIsNowhereUndercut() {
    // Any point of the inner solid is at least that far from the outer one's side.
    Random random = new Random(12);
    for (int i = 0; i < 200; i++) {
      double radius = 20 + 80 * random.nextDouble();
      double inner = radius * (0.2 + 0.7 * random.nextDouble());
      Shell shell = Shell.of(new Hemisphere(radius), new ConeFrustum(inner / 3, inner, inner / 2));
      for (int step = 0; step <= 10; step++) {
        double depth = inner / 2 * step / 10;
        double out = inner + (inner / 3 - inner) * step / 10;
        assertTrue(radius - Math.hypot(out, depth) >= shell.wallMm() - 1e-9);
      }
    }
  }
}
