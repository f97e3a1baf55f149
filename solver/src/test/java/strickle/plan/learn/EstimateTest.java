package strickle.plan.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EstimateTest {

  /** Beta(1, 1) is even; of Beta(2, 1) a part x² lies below x; Beta(1, 3) has 1 − (1 − x)³. */
  @Test
  void quantilesOfSimpleBetaDistributionsAreExact() {
    assertEquals(0.05, GoodShare.quantile(1, 1, 0.05), 1e-6);
    assertEquals(Math.sqrt(0.05), GoodShare.quantile(2, 1, 0.05), 1e-6);
    assertEquals(1 - Math.cbrt(0.05), GoodShare.quantile(1, 3, 0.95), 1e-6);
    // Beta(1/2, 1/2) is the arcsine law: sin²(π/2 x p).
    assertEquals(Math.pow(Math.sin(Math.PI / 4 * 1), 2), GoodShare.quantile(0.5, 0.5, 0.5), 1e-4);
  }

  /** 20 pieces at 90 % and 80 recorded, 70 of them good: (18 + 70) / 100. */
  @Test
  void theShareIsThatOfTheBookAndOfTheRecordsTogether() {
    Estimate share = GoodShare.of(0.9, 70, 10);
    assertEquals(0.88, share.mean(), 1e-12);
    assertTrue(share.low() > 0.82 && share.low() < 0.83, share.toString());
    assertTrue(share.high() > 0.92 && share.high() < 0.94, share.toString());
    assertTrue(!share.excludes(0.9));
    assertTrue(GoodShare.of(0.9, 50, 50).excludes(0.9));
  }

  @Test
  void aBookThatSaysAllTurnOutCanStillBeProvedWrong() {
    assertTrue(GoodShare.of(1, 0, 10).mean() < 0.7);
    assertTrue(GoodShare.of(1, 1000, 0).mean() > 0.99);
  }

  @Test
  void whenNothingIsLostABookThatSaysAllTurnOutIsNotContradicted() {
    for (int good : List.of(1, 4, 20, 1000)) {
      assertFalse(GoodShare.of(1, good, 0).excludes(1), good + " good");
    }
    assertTrue(GoodShare.of(1, 19, 1).excludes(1));
  }

  /** Noted to the minute, tasks that all took 8 may have taken 7.6 or 8.4: sqrt(2 / 12) = 0.41. */
  @Test
  void numbersThatAreAlikeAreKnownNoBetterThanTheyAreNoted() {
    Estimate four = RobustMean.of(List.of(8.0, 8.0, 8.0, 8.0), Math.sqrt(2.0 / 12));
    assertEquals(8, four.mean());
    // t of 3 degrees of freedom, 2.353, times 0.408 / 2 (Student's table, value from memory).
    assertEquals(8 - 0.480, four.low(), 0.001);
    assertEquals(8 + 0.480, four.high(), 0.001);
    Estimate clock = RobustMean.of(List.of(8.0, 8.0, 8.0, 8.0, 300.0), Math.sqrt(2.0 / 12));
    assertEquals(8, clock.mean(), 0.2);
  }

  @Test
  void oneForgottenClockMovesTheMeanLittle() {
    List<Double> numbers = List.of(9.8, 10.1, 10.0, 9.9, 10.2, 10.0, 300.0);
    Estimate mean = RobustMean.of(numbers);
    assertEquals(10.05, mean.mean(), 0.1);
    assertTrue(mean.high() < 11, mean.toString());
  }

  @Test
  void ofNumbersThatAreAlikeItIsTheNumber() {
    assertEquals(new Estimate(7, 7, 7), RobustMean.of(List.of(7.0, 7.0, 7.0)));
  }

  /** Of 400 samples of ten normal numbers about 90 % of the bands hold the truth. */
  @Test
  void theBandHoldsTheTruthAsOftenAsItSays() {
    Random random = new Random(5);
    int held = 0;
    for (int sample = 0; sample < 400; sample++) {
      List<Double> numbers = new ArrayList<>();
      for (int i = 0; i < 10; i++) {
        numbers.add(50 + 5 * random.nextGaussian());
      }
      held += RobustMean.of(numbers).excludes(50) ? 0 : 1;
    }
    assertTrue(held > 340 && held < 390, held + " of 400");
  }
}
