package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Decoding from a checkpoint finds the schedule that decoding from the beginning finds. */
class CheckpointsTest {

  private static final int SHOPS = 300;
  private static final int STEPS = 60;
  private static final int ALWAYS = 0;
  private static final int NEVER = Integer.MAX_VALUE;

  @Test
  void everyOrderOfAWalkIsScheduledAsIfItWereTheOnlyOne() {
    int roomy = 0;
    for (long seed = 0; seed < SHOPS; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      roomy += walk("shop " + seed, Decodes.of(shop, ALWAYS), Decodes.of(shop, NEVER), seed);
    }
    assertTrue(roomy > SHOPS * STEPS / 2, roomy + " schedules");
  }

  /** How many orders of a walk, on which every third neighbour is taken over, have room. */
  private static int walk(String shop, Decodes sooner, Decodes plain, long seed) {
    Random random = new Random(seed);
    int[] present = sooner.shuffled(random);
    int roomy = 0;
    for (int i = 0; i < STEPS && present.length > 1; i++) {
      int[] order = neighbour(present, random);
      Optional<Schedule> schedule = sooner.decode(order);
      assertEquals(plain.decode(order), schedule, shop + ", step " + i);
      if (schedule.isPresent() && random.nextInt(3) == 0) {
        sooner.decoder().takenOver(order);
        present = order;
      }
      roomy += schedule.isPresent() ? 1 : 0;
    }
    return roomy;
  }

  /** The same order now and then, and else with two claims exchanged, mostly near ones. */
  private static int[] neighbour(int[] order, Random random) {
    int[] other = order.clone();
    int one = random.nextInt(order.length);
    int far = random.nextInt(4) == 0 ? order.length : Math.min(3, order.length);
    int two = (one + random.nextInt(far)) % order.length;
    other[one] = order[two];
    other[two] = order[one];
    return other;
  }
}
