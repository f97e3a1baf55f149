package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.OptionalLong;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.plan.promise.Offer;
import strickle.plan.promise.Promise;

/** On tiny weeks no date is possible a minute before the promised ones. */
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
class ExactPromiseTest {

  private static final Duration LIMIT = Duration.ofMinutes(2);

  @ParameterizedTest
  @CsvSource({"4, 9, false", "5, 1, false", "6, 2, true"})
  void noDateIsPossibleAMinuteBefore(int castings, long seed, boolean crowded) {
    ExactWeekSample week = new ExactWeekSample(castings, seed, crowded);
    Promise promise =
        PromiseSample.onTime(week.book(), seed, 500).orElseThrow().promise(OptionalLong.of(500));
    Offer kept = promise.kept().orElseThrow();
    Offer pressed = promise.pressed().orElse(kept);
    assertEquals(new ExactPromise.Earliest(kept.ready(), true), ExactPromise.kept(kept, LIMIT));
    assertEquals(
        new ExactPromise.Earliest(pressed.ready(), true), ExactPromise.pressed(pressed, LIMIT));
  }
}
