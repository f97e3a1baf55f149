package strickle.api;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Makes guessing slow: after three wrong passwords from one address for one studio, each further
 * one doubles the pause before the next may be tried, up to a quarter of an hour. Right ones forget
 * the wrong ones. Remembers a thousand addresses at most, and forgets the one that tried longest
 * ago.
 */
final class Throttle {

  private static final int FREE = 3;
  private static final Duration LONGEST = Duration.ofMinutes(15);
  private static final int REMEMBERED = 1000;
  private static final int MOST_DOUBLINGS = 20;

  /**
   * Who tries what.
   *
   * @param studio the id of the studio; empty for one that is not there
   * @param address where the request comes from
   */
  record Attempt(String studio, String address) {}

  private record Wrong(int times, Instant until) {}

  private final Clock clock;
  private final Map<Attempt, Wrong> wrong = new LinkedHashMap<>(16, 0.75f, true);

  Throttle(Clock clock) {
    this.clock = clock;
  }

  /** How long to wait before trying; nothing when there is no need to. */
  synchronized Optional<Duration> pause(Attempt attempt) {
    return Optional.ofNullable(wrong.get(attempt))
        .map(before -> Duration.between(clock.instant(), before.until()))
        .filter(pause -> pause.isPositive())
        .map(pause -> pause.compareTo(LONGEST) > 0 ? LONGEST : pause);
  }

  /**
   * Counts a try as wrong before it is looked at, so that of many at once no more go through than
   * of as many one after the other; {@link #right} or {@link #untried} takes it back.
   *
   * @return how long to wait first; nothing when it was counted and may be tried
   */
  synchronized Optional<Duration> begin(Attempt attempt) {
    Optional<Duration> pause = pause(attempt);
    if (pause.isEmpty()) {
      wrong(attempt);
    }
    return pause;
  }

  private void wrong(Attempt attempt) {
    keep(attempt, times(attempt) + 1);
    if (wrong.size() > REMEMBERED) {
      wrong.remove(wrong.keySet().iterator().next());
    }
  }

  /** Takes back a try that came to nothing. */
  synchronized void untried(Attempt attempt) {
    int times = times(attempt) - 1;
    if (times > 0) {
      keep(attempt, times);
    } else {
      wrong.remove(attempt);
    }
  }

  private int times(Attempt attempt) {
    return Optional.ofNullable(wrong.get(attempt)).map(Wrong::times).orElse(0);
  }

  private void keep(Attempt attempt, int times) {
    wrong.put(attempt, new Wrong(times, clock.instant().plus(pauseAfter(times))));
  }

  /** Notes that it was the right one. */
  synchronized void right(Attempt attempt) {
    wrong.remove(attempt);
  }

  /** How many are remembered. */
  synchronized int size() {
    return wrong.size();
  }

  private static Duration pauseAfter(int times) {
    if (times < FREE) {
      return Duration.ZERO;
    }
    Duration pause = Duration.ofSeconds(1L << Math.min(times - FREE + 1, MOST_DOUBLINGS));
    return pause.compareTo(LONGEST) > 0 ? LONGEST : pause;
  }
}
