package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Solid;

/** The check values are derived: frustum R60 r50 h80 mm, 2250 kg/m³, core 100 g; 0.1 %. */
class UpliftTest {

  private static final double DENSITY = 2250;
  private static final Solid CORE = new Solid.ConeFrustum(50, 60, 80);
  private static final double ML = Volume.ml(CORE);

  @Test
  void aHungCoreIsLiftedByAllItDisplaces() {
    // Archimedes, the principle in precast.org, "Why buoyancy forces cannot be ignored".
    Uplift hung = Uplift.hung(DENSITY, ML, 100);
    assertEquals(1715.3, hung.displacedGrams(), 1.7);
    assertEquals(16.821, hung.grossNewtons(), 0.0168);
    assertEquals(15.841, hung.netNewtons(), 0.0158);
    assertEquals(2420, hung.ballastGrams(1.5), 5);
  }

  @Test
  void theColumnOverASealedBaseDoesNotLift() {
    assertEquals(2.958, sealed(CORE, 0).grossNewtons(), 0.003);
  }

  @Test
  void aStraightCoreSealedOnTheFloorHasNoUplift() {
    assertEquals(0, sealed(new Solid.Cylinder(50, 80), 0).grossNewtons(), 1e-9);
    assertEquals(0, sealed(new Solid.Box(50, 60, 80), 0).grossNewtons(), 1e-9);
  }

  @Test
  void aSealedCoreNarrowerAtTheTopIsPressedDown() {
    Uplift narrow = sealed(new Solid.ConeFrustum(60, 50, 80), 100);
    assertTrue(narrow.grossNewtons() < 0);
    assertEquals(0, narrow.ballastGrams(1.5));
  }

  private static Uplift sealed(Solid core, double grams) {
    double base = CoreBase.mm2(core).orElseThrow();
    double height = CoreBase.heightMm(core).orElseThrow();
    return Uplift.sealed(DENSITY, Volume.ml(core), grams, base, height);
  }

  @Test
  void aSealedBaseNeverLiftsMoreAndWeightNeverEither() {
    Random random = new Random(4);
    for (int i = 0; i < 1000; i++) {
      double ml = 10 + 5000 * random.nextDouble();
      double grams = 500 * random.nextDouble();
      double base = 20_000 * random.nextDouble();
      Uplift hung = Uplift.hung(1500 + 1000 * random.nextDouble(), ml, grams);
      double density = hung.wetDensityKgPerM3();
      Uplift sealed = Uplift.sealed(density, ml, grams, base, 200 * random.nextDouble());
      Uplift heavier = Uplift.hung(density, ml, grams + 10);
      assertTrue(sealed.netNewtons() <= hung.netNewtons());
      assertTrue(heavier.ballastGrams(1.5) <= hung.ballastGrams(1.5));
    }
  }

  @Test
  void everythingThatCannotBeIsToldAtOnce() {
    Faulty faulty = assertThrows(Faulty.class, () -> new Uplift(0, -1, -1, Double.NaN));
    assertEquals(
        List.of(".wetDensityKgPerM3", ".submergedMl", ".sealedColumnMl", ".massGrams"),
        faulty.faults().stream().map(Fault::path).toList());
  }

  @Test
  void roundSolidsHaveNoBottomOfTheirOwn() {
    List<Solid> round =
        List.of(
            new Solid.Hemisphere(50),
            new Solid.SphericalCap(50, 20),
            new Solid.Torus(50, 10),
            new Solid.Ellipsoid(1, 2, 3));
    for (Solid solid : round) {
      assertTrue(CoreBase.mm2(solid).isEmpty());
      assertTrue(CoreBase.heightMm(solid).isEmpty());
    }
    Solid pyramid = new Solid.PyramidFrustum(100, 50, 80, 40, 60);
    assertEquals(5000, CoreBase.mm2(pyramid).orElseThrow());
    assertEquals(60, CoreBase.heightMm(pyramid).orElseThrow());
  }
}
