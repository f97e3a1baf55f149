package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Changes of an order keep every claim, and look at what holds the late ones up. */
class NeighboursTest {

  @Test
  void aChangedOrderStillHasEveryClaimOnce() {
    for (long seed = 0; seed < 60; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      int[] all = Decodes.of(shop).inOrder();
      int[] order = all.clone();
      Tables tables = new Tables(shop);
      Trials trials =
          new Trials(tables, Budget.ofSchedules(Long.MAX_VALUE), Optional.empty(), report -> {});
      Neighbours neighbours = new Neighbours(tables, trials.decoder().claims());
      Random random = new Random(seed);
      for (int i = 0; i < 200 && order.length > 1; i++) {
        trials.tryOrder(order);
        trials.vary(order, neighbours, random);
        int[] sorted = order.clone();
        Arrays.sort(sorted);
        assertArrayEquals(all, sorted, "shop " + seed);
      }
    }
  }

  @Test
  void everyOrderIsComeBy() {
    int[] same = {1, 1, 1, 1};
    Tables tables = new Tables(Published.oneMachine(new int[] {4, 3, 2, 1}, same, same));
    Trials trials =
        new Trials(tables, Budget.ofSchedules(Long.MAX_VALUE), Optional.empty(), report -> {});
    Neighbours neighbours = new Neighbours(tables, trials.decoder().claims());
    Random random = new Random(1);
    int[] order = {0, 1, 2, 3};
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 2000; i++) {
      trials.tryOrder(order);
      trials.vary(order, neighbours, random);
      seen.add(Arrays.toString(order));
    }
    assertEquals(24, seen.size());
  }

  @Test
  void aLateJobWaitsForTheOneThatHasItsMachine() {
    Shop shop = Published.oneMachine(new int[] {5, 7}, new int[] {1, 1}, new int[] {100, 10});
    Critical critical = critical(shop, 0, 1);
    assertEquals(1, critical.pairs());
    assertEquals(1, critical.held(0));
    assertEquals(0, critical.holder(0));
  }

  @Test
  void aLateJobWaitsForTheOneThatHasItsWorker() {
    ShopDraft draft = new ShopDraft().worker(Calendar.of(new int[] {0, 20}, new int[] {5, 90}));
    draft.kind(1, ActivityDraft.of(5).by(0)).kind(1, ActivityDraft.of(7).by(0));
    Critical critical = critical(draft.due(10, 1, new Due.Need(1, 1)).shop(), 0, 1);
    assertEquals(1, critical.pairs());
    assertEquals(1, critical.held(0));
    assertEquals(0, critical.holder(0));
  }

  @Test
  void whereNothingIsLateNothingIsHeldUp() {
    Shop shop = Published.oneMachine(new int[] {5, 7}, new int[] {1, 0}, new int[] {5, 0});
    assertEquals(0, critical(shop, 0, 1).pairs());
  }

  @Test
  void whatHoldsUpIsAnotherClaim() {
    for (long seed = 0; seed < 200; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      Decodes decodes = Decodes.of(shop);
      int[] order = decodes.shuffled(new Random(seed));
      if (decodes.decode(order).isPresent()) {
        Critical critical = critical(shop, order);
        for (int pair = 0; pair < critical.pairs(); pair++) {
          assertNotEquals(critical.held(pair), critical.holder(pair));
          assertTrue(isJob(decodes, critical.held(pair)) && isJob(decodes, critical.holder(pair)));
        }
      }
    }
  }

  private static boolean isJob(Decodes decodes, int claim) {
    return claim >= 0 && claim < decodes.decoder().claims().jobClaims;
  }

  private static Critical critical(Shop shop, int... order) {
    Tables tables = new Tables(shop);
    Decoder decoder = new Decoder(tables);
    assertTrue(decoder.decode(order));
    Critical critical = new Critical(tables, decoder.claims(), decoder.timetable().start.length);
    critical.read(decoder);
    return critical;
  }
}
