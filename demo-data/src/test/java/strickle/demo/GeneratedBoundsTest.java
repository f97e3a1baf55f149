package strickle.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.bench.CrowdedWeeks;
import strickle.book.Book;
import strickle.plan.Bounding;
import strickle.plan.Bounds;
import strickle.plan.Bounds.OrderBound;
import strickle.plan.Cover;
import strickle.plan.Effort;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;

/** No plan of a generated book beats its bounds. */
class GeneratedBoundsTest {

  /** What of a plan is better than can be, with the castings and the seed to make it again. */
  private static List<String> beaten(Book book, long schedules, OptionalDouble percent) {
    OffsetDateTime from = Generator.start(book);
    PlanRequest request = new PlanRequest(from, Effort.ofSchedules(schedules), 1).covering(percent);
    Plan plan = Planning.of(book, request, progress -> {}).run();
    Bounds bounds = Bounding.of(book, from, Cover.of(percent));
    List<String> beaten = new ArrayList<>();
    if (plan.totals().weightedLateHours().compareTo(bounds.weightedLateHours()) < 0) {
      beaten.add("late hours " + plan.totals() + " " + bounds.weightedLateHours());
    }
    if (plan.totals().attendedMinutes() < bounds.attendedMinutes()) {
      beaten.add("handwork " + plan.totals() + " " + bounds.attendedMinutes());
    }
    for (int i = 0; i < bounds.orders().size(); i++) {
      OrderBound bound = bounds.orders().get(i);
      OrderOutcome outcome = plan.orders().get(i);
      assertEquals(bound.order(), outcome.order());
      if (outcome.ready().isBefore(bound.served()) || bound.served().isBefore(bound.alone())) {
        beaten.add(outcome + " " + bound);
      }
    }
    return beaten;
  }

  private static void assertNoneBeaten(boolean crowded, long schedules, OptionalDouble percent) {
    List<String> beaten = new ArrayList<>();
    for (int seed = 0; seed < 80; seed++) {
      Book book = CrowdedWeeks.book(4 + seed % 30, seed, crowded);
      int number = seed;
      beaten(book, schedules, percent).forEach(one -> beaten.add("seed " + number + ": " + one));
    }
    assertTrue(beaten.isEmpty(), () -> String.join("\n", beaten));
  }

  @Test
  void noPlanIsLessLateOrLessWorkThanItsBookAllows() {
    assertNoneBeaten(false, 300, OptionalDouble.empty());
  }

  @Test
  void noPlanOfACrowdedWeekIsEither() {
    assertNoneBeaten(true, 300, OptionalDouble.empty());
  }

  @Test
  void noPlanWithACoverIsEither() {
    assertNoneBeaten(true, 60, OptionalDouble.of(90));
  }

  @Test
  void noPlanOfAnOrderByItselfIsSoonerThanItCanBeAndMostAreAsSoon() {
    int orders = 0;
    int reached = 0;
    for (int seed = 0; seed < 40; seed++) {
      Book book = Generator.book(6 + seed % 20, 6000 + seed);
      OffsetDateTime from = Generator.start(book);
      PlanRequest request = new PlanRequest(from, Effort.ofSchedules(60), 0);
      for (OrderBound bound : Bounding.of(book, from, Cover.AVERAGE).orders()) {
        OffsetDateTime planned = Bounding.alone(book, request, bound.order());
        assertTrue(!planned.isBefore(bound.alone()), "seed " + seed + ": " + bound + " " + planned);
        orders++;
        reached += planned.isEqual(bound.alone()) ? 1 : 0;
      }
    }
    assertTrue(10 * reached > 7 * orders, reached + " of " + orders);
  }
}
