package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strickle.book.Fault;
import strickle.book.Faults;

class EffortTest {

  private static final Effort ONE = Effort.ofSchedules(1);

  @Test
  void anEffortIsANumberOfSchedulesOrATime() {
    assertEquals(new Effort(OptionalLong.of(5), Optional.empty()), Effort.ofSchedules(5));
    Duration second = Duration.ofSeconds(1);
    assertEquals(new Effort(OptionalLong.empty(), Optional.of(second)), Effort.ofTime(second));
  }

  @Test
  void neitherAndBothAreRefused() {
    assertEquals(
        new Fault("", "neither schedules nor a time", "a number of schedules or a time"),
        Faults.only(() -> new Effort(OptionalLong.empty(), Optional.empty())));
    assertEquals(
        "schedules and a time",
        Faults.only(() -> new Effort(OptionalLong.of(1), Optional.of(Duration.ofSeconds(1))))
            .found());
  }

  @ParameterizedTest
  @ValueSource(longs = {0, -1, Long.MIN_VALUE})
  void lessThanOneScheduleIsRefused(long schedules) {
    assertEquals(List.of(".schedules"), Faults.paths(() -> Effort.ofSchedules(schedules)));
  }

  @ParameterizedTest
  @ValueSource(longs = {0, -1})
  void noTimeIsRefused(long nanos) {
    assertEquals(List.of(".time"), Faults.paths(() -> Effort.ofTime(Duration.ofNanos(nanos))));
  }

  @Test
  void aRequestNeedsABeginningOfAYearThatCanBeMeantAndAnEffort() {
    OffsetDateTime longAgo = OffsetDateTime.parse("1969-12-31T00:00Z");
    assertEquals(List.of(".from"), Faults.paths(() -> new PlanRequest(longAgo, ONE, 0)));
    assertEquals(List.of(".from", ".effort"), Faults.paths(() -> new PlanRequest(null, null, 0)));
  }
}
