package strickle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static strickle.plan.Studios.FROM;
import static strickle.plan.Studios.order;
import static strickle.plan.Studios.tiles;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import strickle.book.Book;

/** Planning for a time, and stopping it; the limits are wide, as a test machine may be busy. */
@Tag("slow")
class StoppingTest {

  private static final Duration AN_HOUR = Duration.ofHours(1);
  private static final Book BOOK =
      tiles(
          order("A", 20, "2027-04-09T12:00"),
          order("B", 12, "2027-04-12T12:00"),
          order("C", 10, "2027-04-07T12:00"));

  private static Planning planning(Duration time, Runnable atFirstPlan) {
    PlanRequest request = new PlanRequest(FROM, Effort.ofTime(time), 0);
    return Planning.of(BOOK, request, progress -> atFirstPlan.run());
  }

  @Test
  @Timeout(60)
  void aPlanningThatIsStoppedGivesTheBestPlanItHas() throws Exception {
    CountDownLatch found = new CountDownLatch(1);
    Planning planning = planning(AN_HOUR, found::countDown);
    CompletableFuture<Plan> plan = CompletableFuture.supplyAsync(planning::run);
    found.await();
    planning.stop();
    Planned.assertValid(BOOK, plan.get(20, TimeUnit.SECONDS));
  }

  @Test
  @Timeout(60)
  void aPlanningStoppedBeforeItBeginsStillGivesAPlan() {
    Planning planning = planning(AN_HOUR, () -> {});
    planning.stop();
    Planned.assertValid(BOOK, planning.run());
  }

  @Test
  @Timeout(60)
  void stoppingTwiceAndAfterTheEndDoesNoHarm() {
    Planning planning = planning(Duration.ofMillis(100), () -> {});
    Plan plan = planning.run();
    planning.stop();
    planning.stop();
    Planned.assertValid(BOOK, plan);
  }

  @Test
  @Timeout(60)
  void aTimeIsKept() {
    long began = System.nanoTime();
    Plan plan = planning(Duration.ofMillis(300), () -> {}).run();
    long millis = Duration.ofNanos(System.nanoTime() - began).toMillis();
    assertTrue(millis >= 300 && millis < 20_000, millis + " ms");
    Planned.assertValid(BOOK, plan);
  }

  @Test
  @Timeout(60)
  void oneNanosecondIsEnoughForAPlan() {
    Plan plan = planning(Duration.ofNanos(1), () -> {}).run();
    Planned.assertValid(BOOK, plan);
    assertEquals(42, plan.lots().stream().mapToInt(lot -> lot.runs().get(0).castings()).sum());
  }
}
