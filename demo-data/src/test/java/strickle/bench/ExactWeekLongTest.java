package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import strickle.plan.Effort;

/**
 * The planner held against the best plans of forty small weeks, and of forty crowded ones. A week
 * whose best plan is not proved in time is replaced by that of the next seed.
 */
@Tag("long")
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
class ExactWeekLongTest {

  private static final int WEEKS = 40;
  private static final long SCHEDULES = 100_000;
  private static final Duration LIMIT = Duration.ofMinutes(2);

  /** The most attended minutes above the fewest possible, on average. */
  private static final double GAP_PERCENT = 0.5;

  /** In how many of the crowded weeks the planner has to be as little late as can be. */
  private static final int NEARLY_ALL = 39;

  private static List<ExactWeekCase> proved(boolean crowded) {
    Effort effort = Effort.ofSchedules(SCHEDULES);
    List<ExactWeekCase> cases =
        ExactWeekCase.proved(WEEKS, 1, crowded, effort, LIMIT, ExactWeekLongTest::assertValid);
    return cases;
  }

  private static void assertValid(ExactWeekCase one) {
    assertEquals(List.of(), one.findings(), one::toString);
  }

  private static void assertHardlyBusier(List<ExactWeekCase> cases) {
    double gap = cases.stream().mapToDouble(ExactWeekCase::attendedGapPercent).average().orElse(0);
    assertTrue(gap <= GAP_PERCENT, () -> gap + " % more attended minutes than need be");
  }

  @Test
  void noWeekIsLaterThanItNeedBe() {
    List<ExactWeekCase> cases = proved(false);
    cases.forEach(one -> assertTrue(one.isLeastLate(), one::toString));
    assertHardlyBusier(cases);
  }

  @Test
  void hardlyACrowdedWeekIsLaterThanItNeedBe() {
    List<ExactWeekCase> cases = proved(true);
    List<ExactWeekCase> later = cases.stream().filter(one -> !one.isLeastLate()).toList();
    assertTrue(WEEKS - later.size() >= NEARLY_ALL, later::toString);
    assertHardlyBusier(cases);
  }
}
