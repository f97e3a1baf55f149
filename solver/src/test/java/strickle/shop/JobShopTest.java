package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Published job shops, solved to their proved makespan by the code that plans a week. */
class JobShopTest {

  /** H. Fisher, G. L. Thompson (1963), instance 6x6 (ft06, mt06): machine, minutes, … per job. */
  private static final int[][] FT06 = {
    {2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6},
    {1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4},
    {2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7},
    {1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9},
    {2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1},
    {1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1}
  };

  /** S. Lawrence (1984), instance 10x5 number 1 (la01, setf1). */
  private static final int[][] LA01 = {
    {1, 21, 0, 53, 4, 95, 3, 55, 2, 34},
    {0, 21, 3, 52, 4, 16, 2, 26, 1, 71},
    {3, 39, 4, 98, 1, 42, 2, 31, 0, 12},
    {1, 77, 0, 55, 4, 79, 2, 66, 3, 77},
    {0, 83, 3, 34, 2, 64, 1, 19, 4, 37},
    {1, 54, 2, 43, 4, 79, 0, 92, 3, 62},
    {3, 69, 4, 77, 1, 87, 2, 87, 0, 93},
    {2, 38, 0, 60, 1, 41, 3, 24, 4, 83},
    {3, 17, 1, 49, 4, 25, 0, 44, 2, 98},
    {4, 77, 3, 79, 2, 43, 1, 75, 0, 96}
  };

  // 55 is proved: the best known value and the lower bound are one.
  @Test
  void fisherAndThompsonsSixBySixTakes55() {
    assertSolved(55, Published.jobShop(FT06), 20_000);
  }

  // 666 is proved, and is the load of one machine.
  @Test
  void lawrencesFirstTakes666() {
    assertSolved(666, Published.jobShop(LA01), 20_000);
  }

  @Test
  void noOrderIsShorterThanTheProvedBest() {
    Decodes decodes = Decodes.of(Published.jobShop(FT06));
    Random random = new Random(1);
    for (int i = 0; i < 2000; i++) {
      assertTrue(decodes.valueOf(decodes.shuffled(random)).late() >= 55);
    }
  }

  private static void assertSolved(int makespan, Shop shop, int schedules) {
    Budget budget = Budget.ofSchedules(schedules);
    Schedule best = new Scheduler(shop, budget, 0, report -> {}).run();
    assertEquals(List.of(), Rules.broken(shop, List.of(Pace.WALL), best));
    assertEquals(makespan, best.value().late());
    assertEquals(List.of(makespan), best.met());
  }
}
