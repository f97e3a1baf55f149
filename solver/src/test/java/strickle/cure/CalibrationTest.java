package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Faulty;

class CalibrationTest {

  private static final AgeRule RULE = new AgeRule.Arrhenius(5000);

  @Test
  void recordsThatAgreeGiveTheirHoursWithoutASpread() {
    // 16 h at 20 °C becomes 29.2 h at 10 °C and 9.1 h at 30 °C (derived).
    Calibration fit = Calibration.of(RULE, exact(16, 10, 20, 30, 25));
    assertEquals(16, fit.referenceHours(), 1e-9);
    assertEquals(0, fit.spreadPercent(), 1e-6);
    assertEquals(16, fit.lowHours(), 1e-6);
    assertEquals(5000, fit.activation().orElseThrow().kelvin(), 1e-3);
  }

  @Test
  void theSpreadIsAFactorWithStudentsReserve() {
    List<Found> records = List.of(found("a", 10, 20), found("b", 20, 20), found("c", 40, 20));
    Calibration fit = Calibration.of(RULE, records);
    // The logarithms lie ln 2 apart: mean ln 20, standard deviation ln 2, t(2) = 2.920.
    assertEquals(20, fit.referenceHours(), 1e-9);
    assertEquals(100, fit.spreadPercent(), 1e-9);
    double factor = Math.pow(2, 2.920 * Math.sqrt(4 / 3.0));
    assertEquals(20 * factor, fit.highHours(), 1e-6);
    assertEquals(20 / factor, fit.lowHours(), 1e-6);
    assertTrue(fit.activation().isEmpty());
  }

  @Test
  void theBandHoldsAboutNinetyOfAHundredFurtherCastings() {
    Random random = new Random(7);
    int inside = 0;
    for (int i = 0; i < 2000; i++) {
      List<Found> records = new ArrayList<>();
      for (int j = 0; j < 6; j++) {
        double temperature = 12 + 14 * random.nextDouble();
        records.add(found("c" + j, scattered(random) / RULE.factor(temperature), temperature));
      }
      Calibration fit = Calibration.of(RULE, records);
      double next = scattered(random);
      inside += fit.lowHours() <= next && next <= fit.highHours() ? 1 : 0;
    }
    assertEquals(0.90, inside / 2000.0, 0.02);
  }

  @Test
  void theActivationIsFoundWithinItsBand() {
    Random random = new Random(8);
    int inside = 0;
    for (int i = 0; i < 1000; i++) {
      List<Found> records = new ArrayList<>();
      for (int j = 0; j < 8; j++) {
        double temperature = 10 + 2 * j;
        records.add(found("c" + j, scattered(random) / RULE.factor(temperature), temperature));
      }
      ActivationFit fit = Calibration.of(RULE, records).activation().orElseThrow();
      inside += fit.lowKelvin() <= 5000 && 5000 <= fit.highKelvin() ? 1 : 0;
    }
    assertEquals(0.90, inside / 1000.0, 0.03);
  }

  @Test
  void twoCastingsSayNothingOfTheSpread() {
    List<Found> two = exact(16, 10, 20);
    Faulty faulty = assertThrows(Faulty.class, () -> Calibration.of(RULE, two));
    assertTrue(faulty.getMessage().contains("found 2 castings"), faulty.getMessage());
    assertThrows(Faulty.class, () -> Calibration.of(RULE, List.of()));
    assertThrows(Faulty.class, () -> new Found("a", List.of()));
  }

  @Test
  void aCastingBelowTheDatumIsNamed() {
    List<Found> records = List.of(found("a", 9, 20), found("b", 9, 20), found("cold", 9, 2));
    AgeRule rule = new AgeRule.NurseSaul(5);
    Faulty faulty = assertThrows(Faulty.class, () -> Calibration.of(rule, records));
    assertTrue(faulty.getMessage().contains("\"cold\""), faulty.getMessage());
  }

  private static double scattered(Random random) {
    return 16 * Math.exp(0.15 * random.nextGaussian());
  }

  private static List<Found> exact(double hours, double... temperatures) {
    List<Found> records = new ArrayList<>();
    for (double temperature : temperatures) {
      records.add(found("at " + temperature, hours / RULE.factor(temperature), temperature));
    }
    return records;
  }

  private static Found found(String name, double hours, double temperature) {
    return new Found(name, List.of(new Stretch(hours, temperature)));
  }
}
