package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.MeshFile;
import strickle.book.Mould;
import strickle.book.SampleBook;
import strickle.book.ShapePart;
import strickle.book.Solid;

/**
 * Volumes of the shapes table. The check values are derived from the formulas; cone and general
 * frustum formulas as read on geometry-formulas.com/frustum-cone, the other formulas from memory.
 */
class VolumeTest {

  private static void assertLitres(double litres, Solid solid) {
    assertEquals(litres, Volume.ml(solid) / 1000, 1e-6 * litres + 5e-7);
  }

  @Test
  void aBoxHoldsLengthTimesWidthTimesHeight() {
    assertLitres(0.7500, new Solid.Box(200, 150, 25));
  }

  @Test
  void aCylinderHoldsItsCircleTimesHeight() {
    assertLitres(0.785398, new Solid.Cylinder(50, 100));
  }

  @Test
  void aConeFrustumHoldsItsPublishedVolumeEitherWayUp() {
    assertLitres(0.762360, new Solid.ConeFrustum(60, 50, 80));
    assertLitres(0.762360, new Solid.ConeFrustum(50, 60, 80));
  }

  @Test
  void aConeHoldsAThirdOfItsCylinder() {
    assertLitres(0.785398 / 3, new Solid.ConeFrustum(50, 0, 100));
  }

  @Test
  void aPyramidFrustumHoldsItsPublishedVolumeEitherWayUp() {
    assertLitres(0.488000, new Solid.PyramidFrustum(100, 100, 80, 80, 60));
    assertLitres(0.488000, new Solid.PyramidFrustum(80, 80, 100, 100, 60));
  }

  @Test
  void aPyramidFrustumWithRoundedEndsIsRightToAMillionth() {
    // The exact volume between any two parallel rectangles, by the prismoidal formula.
    double middle = (130 + 77.3) / 2 * ((100 + 59.6) / 2);
    double exact = 60.0 / 6 * (130 * 100 + 4 * middle + 77.3 * 59.6) / 1000;
    assertEquals(
        exact, Volume.ml(new Solid.PyramidFrustum(130, 100, 77.3, 59.6, 60)), 1.1e-6 * exact);
  }

  @Test
  void aSphericalCapHoldsItsPublishedVolume() {
    assertLitres(0.435634, new Solid.SphericalCap(100, 40));
  }

  @Test
  void aCapAsHighAsItsSphereIsTwoHemispheres() {
    double sphere = 2 * Volume.ml(new Solid.Hemisphere(75));
    assertEquals(sphere, Volume.ml(new Solid.SphericalCap(75, 150)), 1e-9 * sphere);
  }

  @Test
  void aHemisphereHoldsItsPublishedVolume() {
    assertLitres(0.883573, new Solid.Hemisphere(75));
  }

  @Test
  void aTorusHoldsItsPublishedVolume() {
    assertLitres(0.266479, new Solid.Torus(60, 15));
  }

  @Test
  void anEllipsoidHoldsItsPublishedVolume() {
    assertLitres(0.804248, new Solid.Ellipsoid(80, 60, 40));
  }

  @Test
  void aBowlIsItsOuterLessItsInnerSolid() {
    Mould bowl = shaped(add(new Solid.Hemisphere(75)), take(new Solid.Hemisphere(65)));
    double inner = Volume.ml(new Solid.Hemisphere(65));
    assertEquals(Volume.ml(new Solid.Hemisphere(75)) - inner, Volume.ml(bowl), 1e-9);
  }

  @Test
  void solidsThatAreAddedAddTheirVolumes() {
    Solid foot = new Solid.Cylinder(40, 10);
    Solid body = new Solid.ConeFrustum(50, 60, 80);
    double both = Volume.ml(foot) + Volume.ml(body);
    assertEquals(both, Volume.ml(shaped(add(foot), add(body))), 1e-9 * both);
  }

  @Test
  void solidsThatLeaveNothingAreRefused() {
    Solid box = new Solid.Box(0.1, 0.2, 0.3);
    Mould cancelled = shaped(add(box), add(box), add(box), take(new Solid.Box(0.3, 0.2, 0.3)));
    Mould more = shaped(take(new Solid.Hemisphere(75)), add(new Solid.Hemisphere(65)));
    for (Mould mould : List.of(cancelled, more)) {
      Faulty faulty = assertThrows(Faulty.class, () -> Volume.ml(mould));
      assertEquals(".shape", faulty.faults().get(0).path());
    }
  }

  @Test
  void aGivenVolumeIsTakenAsItIs() {
    assertEquals(1180, Volume.ml(SampleBook.planterDeep()));
  }

  @Test
  void aMeasuredMeshGivesItsVolume() {
    assertEquals(321.5, Volume.ml(meshed(OptionalDouble.of(321.5))));
  }

  @Test
  void aMeshThatWasNotMeasuredIsNamedAndRefused() {
    Mould mould = meshed(OptionalDouble.empty());
    String message = assertThrows(IllegalStateException.class, () -> Volume.ml(mould)).getMessage();
    assertTrue(message.contains("bowl.stl") && message.contains(mould.id()), message);
  }

  private static ShapePart add(Solid solid) {
    return new ShapePart(solid, false);
  }

  private static ShapePart take(Solid solid) {
    return new ShapePart(solid, true);
  }

  private static Mould shaped(ShapePart... shape) {
    return mould(Arrays.asList(shape), Optional.empty());
  }

  private static Mould meshed(OptionalDouble measuredMl) {
    return mould(List.of(), Optional.of(new MeshFile("bowl.stl", LengthUnit.MM, measuredMl)));
  }

  private static Mould mould(List<ShapePart> shape, Optional<MeshFile> mesh) {
    Mould like = SampleBook.planterDeep();
    return new Mould(
        like.id(),
        like.name(),
        like.forms(),
        like.cavities(),
        OptionalDouble.empty(),
        shape,
        mesh,
        like.wastePercent(),
        like.prepMinutes(),
        like.pourMinutes(),
        like.demouldMinutes(),
        like.setHours(),
        like.setAtMostHours(),
        Optional.empty(),
        like.consumes());
  }
}
