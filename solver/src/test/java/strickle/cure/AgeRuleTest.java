package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Faulty;

class AgeRuleTest {

  private static final List<Stretch> LOG =
      List.of(new Stretch(6, 15), new Stretch(6, 25), new Stretch(12, 18));

  private static final List<AgeRule> RULES =
      List.of(
          new AgeRule.En1992(),
          new AgeRule.Arrhenius(5000),
          AgeRule.Arrhenius.ofEnergy(33.5),
          new AgeRule.NurseSaul(0),
          new AgeRule.NurseSaul(-10));

  @ParameterizedTest
  @CsvSource({"5, 0.4778", "10, 0.6161", "20, 0.9981", "30, 1.5662"})
  void theStandardsFactorIsTheDefault(double temperatureC, double factor) {
    // EN 1992-1-1 Annex B, Eq. B.10, value from memory; figures derived.
    assertEquals(factor, new AgeRule.En1992().factor(temperatureC), 1e-4);
  }

  @ParameterizedTest
  @CsvSource({
    "5, 0.3986",
    "10, 0.5475",
    "15, 0.7438",
    "20, 1",
    "25, 1.3311",
    "30, 1.7553",
    "35, 2.2939",
    "40, 2.9723"
  })
  void fiveThousandKelvinMakeTheseFactors(double temperatureC, double factor) {
    // Q = 5000 K: ASTM C1074 App. X1, value from memory; figures derived, 0.1 %.
    assertEquals(factor, new AgeRule.Arrhenius(5000).factor(temperatureC), 0.001 * factor);
  }

  @ParameterizedTest
  @CsvSource({"10, 0.5481", "30, 1.7536"})
  void anActivationEnergyIsDividedByTheGasConstant(double temperatureC, double factor) {
    // 41.5 kJ/mol, derived, 0.1 %.
    AgeRule rule = AgeRule.Arrhenius.ofEnergy(41.5);
    assertEquals(factor, rule.factor(temperatureC), 0.001 * factor);
  }

  @Test
  void aLogOfTemperaturesAddsUp() {
    // Derived: 6 h at 15, 6 h at 25, 12 h at 18 °C: 23.123 h, and 456 °C·h above 0 °C.
    assertEquals(23.123, new AgeRule.Arrhenius(5000).hours(LOG), 0.023);
    assertEquals(456, new AgeRule.NurseSaul(0).degreeHours(LOG), 1e-9);
    assertEquals(456 / 20.0, new AgeRule.NurseSaul(0).hours(LOG), 1e-9);
  }

  @Test
  void fourWeeksAtFifteenDegreesAreSevenHundredTwentyEightDegreeDays() {
    // civinnovate.com/?p=18387, an exam question with its answer: datum −11 °C, 728 °C·d.
    List<Stretch> log = List.of(new Stretch(28 * 24, 15));
    assertEquals(728, new AgeRule.NurseSaul(-11).degreeHours(log) / 24, 1e-9);
  }

  @Test
  void nothingIsGatheredBelowTheDatum() {
    // The form of ASTM C1074, second-hand.
    AgeRule.NurseSaul rule = new AgeRule.NurseSaul(5);
    assertEquals(0, rule.degreeHours(List.of(new Stretch(10, 3))));
    assertEquals(0, rule.factor(3));
  }

  @Test
  void warmerIsNeverSlower() {
    Random random = new Random(5);
    for (AgeRule rule : RULES) {
      for (int i = 0; i < 1000; i++) {
        double colder = -30 + 100 * random.nextDouble();
        double warmer = colder + 10 * random.nextDouble();
        assertTrue(rule.factor(colder) <= rule.factor(warmer), rule + " at " + colder);
      }
    }
  }

  @Test
  void ageAddsUpOverPartsOfALog() {
    for (AgeRule rule : RULES) {
      double parts = LOG.stream().mapToDouble(one -> rule.hours(List.of(one))).sum();
      assertEquals(parts, rule.hours(LOG), 1e-9);
    }
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThrows(Faulty.class, () -> new AgeRule.Arrhenius(-1));
    assertThrows(Faulty.class, () -> new AgeRule.NurseSaul(20));
    assertThrows(Faulty.class, () -> new Stretch(0, 20));
    assertThrows(Faulty.class, () -> new Stretch(1, 90));
    for (AgeRule rule : RULES) {
      assertThrows(IllegalArgumentException.class, () -> rule.factor(101));
      assertThrows(IllegalArgumentException.class, () -> rule.factor(Double.NaN));
    }
  }
}
