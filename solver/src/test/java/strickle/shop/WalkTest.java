package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Walks try orders of all claims only, and come to better ones. */
class WalkTest {

  private static final int STEPS = 300;

  private interface Making {
    Walk of(Trials trials, Neighbours neighbours, Random random);
  }

  private static final Making LATE_ACCEPTANCE =
      (trials, neighbours, random) ->
          new LateAcceptance(trials, neighbours, LateAcceptance.QUICK, random);

  private static final Making POPULATION =
      (trials, neighbours, random) ->
          new Population(trials, neighbours, List.of(trials.bestOrder().clone()), STEPS, random);

  private static Trials trials(Shop shop, int schedules) {
    Tables tables = new Tables(shop);
    Trials trials =
        new Trials(tables, Budget.ofSchedules(schedules), Optional.empty(), report -> {});
    trials.tryOrder(Decodes.of(shop).inOrder());
    return trials;
  }

  private static Walk walk(Making making, Shop shop, Trials trials) {
    return making.of(
        trials, new Neighbours(new Tables(shop), trials.decoder().claims()), new Random(5));
  }

  /** One machine whose jobs stand in the worst order: least weight for its minutes first. */
  private static Shop reversed(int jobs) {
    int[] minutes = new int[jobs];
    int[] weights = new int[jobs];
    for (int i = 0; i < jobs; i++) {
      minutes[i] = jobs - i;
      weights[i] = i + 1;
    }
    return Published.oneMachine(minutes, weights, new int[jobs]);
  }

  @Test
  void everyOrderTriedHasEveryClaimOnce() {
    for (Making making : List.of(LATE_ACCEPTANCE, POPULATION)) {
      for (long seed = 0; seed < 40; seed++) {
        Shop shop = RandomShop.of(seed).shop();
        Trials trials = trials(shop, STEPS);
        if (trials.found() && trials.bestOrder().length > 1) {
          Walk walk = walk(making, shop, trials);
          while (!trials.spent()) {
            walk.step();
          }
          int[] sorted = trials.bestOrder().clone();
          Arrays.sort(sorted);
          assertArrayEquals(Decodes.of(shop).inOrder(), sorted, "shop " + seed);
        }
      }
    }
  }

  /** The best order is known: by weight for its minutes (W. E. Smith, 1956, value from memory). */
  @Test
  void bothComeToTheBestOrderOfAMachine() {
    Shop shop = reversed(12);
    int[] best = Decodes.of(shop).inOrder();
    for (int i = 0; i < best.length / 2; i++) {
      int kept = best[i];
      best[i] = best[best.length - 1 - i];
      best[best.length - 1 - i] = kept;
    }
    for (Making making : List.of(LATE_ACCEPTANCE, POPULATION)) {
      Trials trials = trials(shop, 20_000);
      Walk walk = walk(making, shop, trials);
      while (!trials.spent()) {
        walk.step();
      }
      assertEquals(Decodes.of(shop).valueOf(best).late(), trials.best().late());
    }
  }

  @Test
  void theTrialsStopOnceTheSchedulesAreUsedUp() {
    for (Making making : List.of(LATE_ACCEPTANCE, POPULATION)) {
      Shop shop = reversed(12);
      Trials trials = trials(shop, 100);
      Walk walk = walk(making, shop, trials);
      for (int i = 0; i < 1000; i++) {
        walk.step();
      }
      assertEquals(100, trials.schedules());
    }
  }

  @Test
  void aWalkReturnsWithEachBetterOrder() {
    Shop shop = reversed(12);
    Trials trials = trials(shop, 5000);
    Walk walk = walk(LATE_ACCEPTANCE, shop, trials);
    List<Long> late = new ArrayList<>(List.of(trials.best().late()));
    while (!trials.spent()) {
      int[] better = trials.walk(walk);
      if (!trials.spent()) {
        late.add(Decodes.of(shop).valueOf(better).late());
      }
    }
    assertTrue(late.size() > 3, late.toString());
    for (int i = 1; i < late.size(); i++) {
      assertTrue(late.get(i) <= late.get(i - 1), late.toString());
    }
  }
}
