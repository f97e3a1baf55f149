package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FormPressureTest {

  private static final double KG_PER_LB = 0.45359237;
  private static final double M3_PER_FT3 = 0.028316846592;
  private static final double MM_PER_FT = 304.8;
  private static final double PASCALS_PER_PSF =
      KG_PER_LB * FormPressure.GRAVITY / (MM_PER_FT * MM_PER_FT / 1e6);

  @Test
  void aHundredAndFiftyPoundsInAFootMakeSixHundredFourFeetDown() {
    // dhglabe.com/blog/concrete-formwork-under-pressure: 150 lb/ft³ x 4 ft = 600 lb/ft², 28.73 kPa.
    double pascals = FormPressure.pascals(150 * KG_PER_LB / M3_PER_FT3, 4 * MM_PER_FT);
    assertEquals(600, pascals / PASCALS_PER_PSF, 1e-9);
    assertEquals(28_730, pascals, 0.005 * 28_730);
  }

  @Test
  void fluidMixesPressWithTheirFullHeadHoweverDeep() {
    // ACI 347 by a letter of its author (concreteconstruction.net, "Use updated wall pressure
    // formulas"): formulas with a lower pressure are for a slump up to 7 in. (175 mm); for more
    // p = w h. The studio's mixes are more fluid than that, so nothing is taken off.
    for (int feet : new int[] {1, 4, 10, 20, 40}) {
      double pascals = FormPressure.pascals(150 * KG_PER_LB / M3_PER_FT3, feet * MM_PER_FT);
      assertEquals(150 * feet, pascals / PASCALS_PER_PSF, 1e-9 * 150 * feet);
    }
  }

  @Test
  void threeMetresOfConcretePressWithSeventyKilopascals() {
    // Second-hand: 23.6 kN/m³ x 3 m is about 70 kPa; 2400 x 9.81 x 3 = 70.63.
    assertEquals(70_630, FormPressure.pascals(2400, 3000), 0.005 * 70_630);
    assertEquals(70_000, FormPressure.pascals(23_600 / 9.81, 3000), 0.015 * 70_000);
  }

  @Test
  void aMouldTwentyCentimetresDeepHoldsFourPointFourKilopascals() {
    // Derived: 0.20 m, 2250 kg/m³, 4.41 kPa (with 9.81 m/s²); tolerance 0.5 %.
    assertEquals(4410, FormPressure.pascals(2250, 200), 0.005 * 4410);
  }

  @Test
  void aWallTakesTheMeanPressureOnItsArea() {
    // Hydrostatics (value from memory): ρ g h² b / 2.
    assertEquals(
        2250 * 9.80665 * 0.2 * 0.2 * 0.3 / 2, FormPressure.wallNewtons(2250, 200, 300), 1e-9);
    assertEquals(0, FormPressure.wallNewtons(2250, 0, 300));
  }

  @Test
  void measuresThatCannotBeAreRefused() {
    for (double wrong : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> FormPressure.pascals(wrong, 1));
      assertThrows(IllegalArgumentException.class, () -> FormPressure.pascals(1, wrong));
      assertThrows(IllegalArgumentException.class, () -> FormPressure.wallNewtons(1, 1, wrong));
    }
  }
}
