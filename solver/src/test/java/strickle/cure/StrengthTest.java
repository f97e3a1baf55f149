package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrengthTest {

  @Test
  void normalCementHasThisPartAfterTenDays() {
    // A public test of EN 1992-1-1 Eq. 3.2 (Blueprints-org/blueprints, test_formula_3_2.py).
    assertEquals(0.84507490, Strength.fraction(10, CementClass.N), 1e-6);
  }

  @Test
  void aStrengthClassOfFortyHasThisAfterAWeek() {
    // A public test (xcfem/xc, test_ec2_concrete_02.py): C40, class N, f_ck(7).
    assertEquals(29.382437587, Strength.characteristicMpa(40, 7, CementClass.N), 1e-6);
    assertEquals(40, Strength.characteristicMpa(40, 28, CementClass.N));
  }

  @ParameterizedTest
  @CsvSource({"R, 0.20", "N, 0.25", "S, 0.38"})
  void theCementsDifferByThePublishedCoefficient(CementClass cement, double s) {
    // EN 1992-1-1 §3.1.2(6), as quoted at oofem.org (matlibmanual, node48): at 7 days √(28/t) is 2.
    assertEquals(-s, Math.log(Strength.fraction(7, cement)), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "R, 0.4239, 0.6630, 0.8187",
    "N, 0.3420, 0.5982, 0.7788",
    "S, 0.1958, 0.4580, 0.6839"
  })
  void theFirstWeekIsThis(CementClass cement, double one, double three, double seven) {
    // Derived from EN 1992-1-1 §3.1.2(6) Eq. 3.2.
    assertEquals(one, Strength.fraction(1, cement), 5e-5);
    assertEquals(three, Strength.fraction(3, cement), 5e-5);
    assertEquals(seven, Strength.fraction(7, cement), 5e-5);
    assertEquals(1, Strength.fraction(28, cement));
  }

  @ParameterizedTest
  @CsvSource({
    "3, 0.46",
    "7, 0.70",
    "14, 0.88",
    "21, 0.96",
    "28, 1.007",
    "56, 1.08",
    "91, 1.12",
    "365, 1.16"
  })
  void theOtherCurveFollowsItsTable(double days, double part) {
    // ACI 209R-92, Type I moist: a and b second-hand, table 2.2.1 value from memory.
    assertEquals(part, Strength.aci209(days), 0.01);
  }

  @Test
  void theOtherCurveEndsWhereItsTableDoes() {
    // ACI 209R-92, table 2.2.1, ultimate: 1.18, value from memory.
    assertEquals(1.18, Strength.aci209(1e9), 0.01);
  }

  @Test
  void theBandHoldsEveryCementAndAnAgeThatIsAFifthOff() {
    Random random = new Random(6);
    for (int i = 0; i < 500; i++) {
      double hours = 6 + 1000 * random.nextDouble();
      double strayed = hours * (0.8 + 0.4 * random.nextDouble());
      Strength band = Strength.band(hours, Optional.empty());
      for (CementClass cement : CementClass.values()) {
        double part = Strength.fraction(strayed / 24, cement);
        assertTrue(band.low() <= part && part <= band.high(), hours + " " + cement);
        Strength known = Strength.band(hours, Optional.of(cement));
        assertTrue(known.low() <= part && part <= known.high(), hours + " " + cement);
      }
    }
  }

  @Test
  void belowADayTheCurveIsNotMeantForUse() {
    // Value from memory.
    assertTrue(Strength.band(16, Optional.empty()).early());
    assertFalse(Strength.band(24, Optional.empty()).early());
  }

  @Test
  void agesThatCannotBeAreRefused() {
    for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> Strength.fraction(wrong, CementClass.N));
      assertThrows(IllegalArgumentException.class, () -> Strength.aci209(wrong));
    }
    assertThrows(
        IllegalArgumentException.class, () -> Strength.characteristicMpa(40, 3, CementClass.N));
    assertThrows(
        IllegalArgumentException.class, () -> Strength.characteristicMpa(0, 7, CementClass.N));
  }

  @Test
  void everyCurveThatIsShownLiesInTheBand() {
    for (double days : new double[] {0.1, 0.5, 1, 3, 7, 28, 90}) {
      for (CementClass cement : CementClass.values()) {
        Strength band = Strength.band(24 * days, Optional.of(cement));
        for (double part : List.of(Strength.fraction(days, cement), Strength.aci209(days))) {
          assertTrue(band.low() <= part && part <= band.high(), days + " days, " + cement);
        }
      }
    }
  }
}
