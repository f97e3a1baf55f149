package strickle.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.store.SettableClock;

class ThrottleTest {

  private static final Throttle.Attempt ONE = new Throttle.Attempt("studio", "192.0.2.1");

  private final SettableClock clock = new SettableClock(Instant.parse("2027-04-05T09:00:00Z"));
  private final Throttle throttle = new Throttle(clock);

  @Test
  void thePauseGrowsWithEveryWrongPasswordUpToAQuarterOfAnHour() {
    wrong(2);
    assertEquals(Optional.empty(), throttle.pause(ONE));
    wrong(1);
    assertEquals(Optional.of(Duration.ofSeconds(2)), throttle.pause(ONE));
    wrong(1);
    assertEquals(Optional.of(Duration.ofSeconds(4)), throttle.pause(ONE));
    wrong(60);
    assertEquals(Optional.of(Duration.ofMinutes(15)), throttle.pause(ONE));
  }

  @Test
  void ofManyTriesAtOnceNoMoreThanThreeAreLookedAt() {
    int tried = 0;
    for (int i = 0; i < 20; i++) {
      tried += throttle.begin(ONE).isEmpty() ? 1 : 0; // none of them has come to an end yet
    }
    assertEquals(3, tried);
  }

  @Test
  void aTryThatCameToNothingIsNotCounted() {
    for (int i = 0; i < 20; i++) {
      assertEquals(Optional.empty(), throttle.begin(ONE));
      throttle.untried(ONE);
    }
    assertEquals(0, throttle.size());
  }

  @Test
  void whoeverIsElsewhereOrRightNeedNotWait() {
    wrong(5);
    assertEquals(Optional.empty(), throttle.pause(new Throttle.Attempt("studio", "192.0.2.2")));
    assertEquals(Optional.empty(), throttle.pause(new Throttle.Attempt("other", "192.0.2.1")));
    throttle.right(ONE);
    assertEquals(Optional.empty(), throttle.pause(ONE));
  }

  @Test
  void aClockThatJumpsBackKeepsNobodyOutForLong() {
    wrong(5);
    clock.set(Instant.parse("2020-01-01T00:00:00Z"));
    assertEquals(Optional.of(Duration.ofMinutes(15)), throttle.pause(ONE));
  }

  @Test
  void itRemembersNoMoreThanAThousand() {
    for (int i = 0; i < 5000; i++) {
      throttle.begin(new Throttle.Attempt("studio", "192.0.2." + i));
    }
    assertTrue(throttle.size() <= 1000);
  }

  private void wrong(int times) {
    for (int i = 0; i < times; i++) {
      clock.set(clock.instant().plus(throttle.pause(ONE).orElse(Duration.ZERO)));
      assertEquals(Optional.empty(), throttle.begin(ONE));
    }
  }
}
