package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import strickle.book.Core;
import strickle.book.SampleBook;
import strickle.book.Solid;

class BallastTest {

  /** Standard gravity, value from memory (exact by convention). */
  private static final double GRAVITY = 9.80665;

  // Derived check: core frustum R60 r50 h80 mm, wet density 2250 kg/m³, core 100 g.
  private static final double DENSITY = 2250;
  private static final double FRUSTUM_ML = Volume.ml(new Solid.ConeFrustum(50, 60, 80));

  @Test
  void aFloatingCoreIsHeldDownByItsUplift() {
    // Derived: displaced 1.7153 kg, net 15.841 N, ballast at factor 1.5 2.42 kg (to 5 g);
    // tolerance 0.1 %.
    assertEquals(1715.3, Ballast.grams(new Core(FRUSTUM_ML, 0, 1), DENSITY), 0.001 * 1715.3);
    assertEquals(15.841, newtons(new Core(FRUSTUM_ML, 100, 1)), 0.001 * 15.841);
    assertEquals(2420, Ballast.grams(new Core(FRUSTUM_ML, 100, 1.5), DENSITY), 5);
  }

  @Test
  void aCoreWithoutMassIsHeldDownByAllItDisplaces() {
    // Derived: gross 16.821 N.
    assertEquals(16.821, newtons(new Core(FRUSTUM_ML, 0, 1)), 0.001 * 16.821);
  }

  @Test
  void theColumnOverASealedBaseDoesNotLift() {
    // Derived: the same core sealed on its r50 base, gross 2.958 N.
    double column = Volume.ml(new Solid.Cylinder(50, 80));
    assertEquals(2.958, newtons(new Core(FRUSTUM_ML - column, 0, 1)), 0.001 * 2.958);
  }

  private static double newtons(Core core) {
    return Ballast.grams(core, DENSITY) / 1000 * GRAVITY;
  }

  @Test
  void theExamplePlanterNeedsTheBallastOfTheFormatPage() {
    // formats.md, run L1-1: 7872 g.
    Core core = SampleBook.planterDeep().core().orElseThrow();
    double grams = Ballast.grams(core, Mixes.slate().wetDensityKgPerM3());
    assertEquals(7872, grams, 0.5);
  }

  @Test
  void aCoreThatSinksNeedsNone() {
    assertEquals(0, Ballast.grams(new Core(100, 226, 1.5), DENSITY));
  }

  @Test
  void aDensityThatCannotBeIsRefused() {
    Core core = new Core(100, 10, 1.5);
    for (double density : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> Ballast.grams(core, density));
    }
  }
}
