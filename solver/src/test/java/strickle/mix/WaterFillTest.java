package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Faulty;

class WaterFillTest {

  // Density of water in kg/m³, tables of physics: values from memory.
  @ParameterizedTest
  @CsvSource({"0, 999.84", "4, 999.975", "10, 999.70", "20, 998.207", "25, 997.047", "40, 992.22"})
  void waterHasItsDensity(double temperatureC, double kgPerM3) {
    assertEquals(kgPerM3, WaterFill.densityKgPerM3(temperatureC), 0.01);
  }

  @Test
  void aLitreOfWarmerWaterWeighsLess() {
    // Above 4 °C; so the same mass fills more.
    for (int celsius = 4; celsius < 40; celsius++) {
      assertTrue(WaterFill.ml(1000, celsius + 1) > WaterFill.ml(1000, celsius));
    }
    assertEquals(1000 / 0.998207, WaterFill.ml(1000, 20), 0.01);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 40.1, Double.NaN})
  void otherTemperaturesAreRefused(double temperatureC) {
    assertThrows(Faulty.class, () -> WaterFill.ml(1000, temperatureC));
  }
}
