package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DewPointTest {

  @Test
  void theDewPointIsThatOfAPublishedExample() {
    // Second-hand, from a note that uses 17.27 and 237.7 °C: the sets of constants agree here.
    assertEquals(17.98, DewPoint.c(22, 78), 0.05);
  }

  @ParameterizedTest
  @CsvSource({"25, 60, 16.69", "20, 50, 9.26", "20, 65, 13.22", "15, 80, 11.58", "30, 70, 23.93"})
  void theDewPointIsThatOfMagnusFormula(double air, double humidity, double dewPoint) {
    // Computed from the formula of WMO Guide No. 8, Annex 4.B, as quoted second-hand.
    assertEquals(dewPoint, DewPoint.c(air, humidity), 0.005);
  }

  @ParameterizedTest
  @CsvSource({"25, 60", "20, 50", "15, 80", "30, 70"})
  void otherPublishedConstantsGiveTheSame(double air, double humidity) {
    // 17.27 and 237.3 °C, as a university's weather service gives them
    // (cales.arizona.edu/azmet/dewpoint.html).
    double gamma = Math.log(humidity / 100) + 17.27 * air / (237.3 + air);
    assertEquals(237.3 * gamma / (17.27 - gamma), DewPoint.c(air, humidity), 0.05);
  }

  @Test
  void fullAirDewsAtItsOwnTemperatureAndDrierAirBelow() {
    Random random = new Random(3);
    for (int i = 0; i < 1000; i++) {
      double air = -45 + 105 * random.nextDouble();
      double humidity = 1 + 98 * random.nextDouble();
      assertEquals(air, DewPoint.c(air, 100), 1e-9);
      assertTrue(DewPoint.c(air, humidity) < DewPoint.c(air, humidity + 1));
    }
  }

  @Test
  void aSurfaceThreeDegreesAboveTheDewPointMayBeCoated() {
    // Trade practice tied to ISO 8502-4 and ISO 12944-7, second-hand.
    double dew = DewPoint.c(20, 65);
    assertTrue(CoatingAir.of(20, 65, dew + 3).isGood());
    assertFalse(CoatingAir.of(20, 65, dew + 2.99).isGood());
    assertEquals(20 - dew, CoatingAir.of(20, 65, 20).marginC(), 1e-12);
  }

  @Test
  void airOfMoreThanEightyFivePercentIsTooDamp() {
    // Same practice. The surface is warm here, so that only the air is wrong.
    assertTrue(CoatingAir.of(20, 85, 30).isGood());
    CoatingAir damp = CoatingAir.of(20, 85.1, 30);
    assertTrue(damp.isWarmEnough());
    assertFalse(damp.isDryEnough());
    assertFalse(damp.isGood());
  }

  @Test
  void airWithoutADewPointIsRefused() {
    double[][] wrong = {{-46, 50}, {61, 50}, {20, 0}, {20, 101}, {Double.NaN, 50}};
    for (double[] w : wrong) {
      assertThrows(IllegalArgumentException.class, () -> DewPoint.c(w[0], w[1]));
    }
    assertThrows(IllegalArgumentException.class, () -> CoatingAir.of(20, 50, 101));
  }
}
