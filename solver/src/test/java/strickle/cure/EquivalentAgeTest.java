package strickle.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class EquivalentAgeTest {

  @Test
  void theFactorIsThatOfTheEurocode() {
    // EN 1992-1-1 Annex B, Eq. B.10, values from memory.
    assertEquals(0.4778, EquivalentAge.factor(5), 5e-5);
    assertEquals(0.6161, EquivalentAge.factor(10), 5e-5);
    assertEquals(0.9981, EquivalentAge.factor(20), 5e-5);
    assertEquals(1.5662, EquivalentAge.factor(30), 5e-5);
  }

  @Test
  void warmerIsNeverSlower() {
    Random random = new Random(43);
    for (int i = 0; i < 1000; i++) {
      double one = -50 + 150 * random.nextDouble();
      double other = -50 + 150 * random.nextDouble();
      double colder = EquivalentAge.factor(Math.min(one, other));
      double warmer = EquivalentAge.factor(Math.max(one, other));
      assertTrue(0 < colder && colder <= warmer, one + " and " + other);
    }
  }

  @Test
  void aTemperatureThatNoRoomHasIsRefused() {
    for (double c : new double[] {-273, -50.1, 100.1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> EquivalentAge.factor(c));
    }
  }
}
