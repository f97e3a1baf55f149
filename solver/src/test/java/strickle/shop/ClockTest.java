package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Waits on clocks that change their rate, against summing minute by minute. */
class ClockTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aWaitEndsAtTheFirstWholeMinuteTheClockHasGoneRound(long seed) {
    Random random = new Random(seed);
    Pace pace = Pace.any(random, 100);
    Clock clock = pace.clock();
    for (int i = 0; i < 300; i++) {
      int from = random.nextInt(600);
      // Sixteenths of a minute: exact, and often just what a whole number of minutes shows.
      double minutes = random.nextInt(6000) / 16.0;
      assertEquals(
          firstMinute(pace, from, minutes), clock.end(from, minutes / 60), pace.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void aLaterBeginningOrALongerWaitNeverEndsEarlier(long seed) {
    Random random = new Random(seed);
    Clock clock = Pace.any(random, 100).clock();
    for (int from = 0; from < 500; from++) {
      double hours = random.nextDouble() * 5;
      assertTrue(clock.end(from, hours) <= clock.end(from + 1, hours));
      assertTrue(clock.end(from, hours) <= clock.end(from, hours + 0.01));
      assertTrue(from <= clock.end(from, hours));
    }
  }

  @ParameterizedTest
  @CsvSource({"0,0", "0.1,6", "0.3333333333333333,20", "0.35,21", "0.351,22", "20,1200", "72,4320"})
  void theWallClockGoesRoundInSixtyMinutes(double hours, int minutes) {
    assertEquals(1000 + minutes, Clock.wall().end(1000, hours));
    assertEquals(minutes, Clock.wall().atLeast(hours));
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24})
  void noWaitIsShorterThanTheLeastItCanTake(long seed) {
    Random random = new Random(seed);
    Clock clock = Pace.any(random, 100).clock();
    for (int from = 0; from < 500; from++) {
      double hours = random.nextDouble() * 5;
      assertTrue(clock.end(from, hours) - from >= clock.atLeast(hours));
    }
  }

  @Test
  void theLeastAWaitCanTakeIsWhatItTakesAtTheFastestRate() {
    Clock clock = Clock.of(new int[] {0, 100, 1000}, new double[] {1, 2, 0.5});
    assertEquals(60, clock.atLeast(2));
    assertEquals(160, clock.end(100, 2));
  }

  @Test
  void aWaitOfAgesDoesNotRunOver() {
    Clock slow = Clock.of(new int[] {0}, new double[] {1e-9});
    assertTrue(slow.end(500_000, 8760) > 100_000_000);
  }

  @ParameterizedTest
  @CsvSource({"0,1,0,1", "0,0,10,1", "0,1,10,-1", "0,NaN,10,1", "0,1,10,Infinity", "5,1,10,1"})
  void ratesThatStandStillAndStartsOutOfOrderAreRefused(int a, double b, int c, double d) {
    assertThrows(
        IllegalArgumentException.class, () -> Clock.of(new int[] {a, c}, new double[] {b, d}));
  }

  @Test
  void aRateForEachStartIsAskedFor() {
    assertThrows(IllegalArgumentException.class, () -> Clock.of(new int[0], new double[0]));
    assertThrows(IllegalArgumentException.class, () -> Clock.of(new int[] {0}, new double[0]));
  }

  private static int firstMinute(Pace pace, int from, double minutes) {
    int at = from;
    double shown = 0;
    while (shown < minutes) {
      shown += pace.rateAt(at);
      at++;
    }
    return at;
  }
}
