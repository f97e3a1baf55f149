package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadyTest {

  @ParameterizedTest
  @CsvSource({"10, 29.2", "15, 21.5", "20, 16", "25, 12.0", "30, 9.1"})
  void sixteenHoursBecomeThese(double temperatureC, double hours) {
    // Derived, Q = 5000 K.
    Ready ready = Ready.at(new AgeRule.Arrhenius(5000), 16, temperatureC).orElseThrow();
    assertEquals(hours, ready.likely(), 0.05);
    assertEquals(0.8 * ready.likely(), ready.low(), 1e-9);
    assertEquals(1.2 * ready.likely(), ready.high(), 1e-9);
  }

  @Test
  void theBandReachesFromTheRuleToTheHandbook() {
    // Set at 4.4 °C over 21.1 °C: 2.78 by the rule (derived), 14.5 h over 6 h in a handbook's table
    // (value from memory).
    AgeRule rule = new AgeRule.Arrhenius(5000);
    double ratio = rule.factor(21.1) / rule.factor(4.4);
    assertEquals(2.78, ratio, 0.005);
    assertTrue((1 - Ready.BAND) * ratio < 14.5 / 6 && 14.5 / 6 < (1 + Ready.BAND) * ratio);
  }

  @Test
  void belowTheDatumNothingIsEverReady() {
    assertTrue(Ready.at(new AgeRule.NurseSaul(0), 16, -1).isEmpty());
  }
}
