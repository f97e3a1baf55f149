package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Pushed late and early again, a schedule is no longer than it was. */
class JustificationTest {

  private static final int ORDERS = 10;

  @Test
  void aJustifiedJobShopOrProjectIsNoLongerAndOftenShorter() {
    int shorter = 0;
    for (long seed = 0; seed < 300; seed++) {
      Shop shop = seed % 2 == 0 ? jobShop(new Random(seed)) : project(new Random(seed));
      Decodes decodes = Decodes.of(shop);
      Justification justification = justification(shop).orElseThrow();
      long before = decodes.valueOf(decodes.shuffled(new Random(seed))).late();
      assertTrue(justification.backAndForth(decodes.decoder().timetable()));
      long after = decodes.valueOf(justification.order()).late();
      assertTrue(after <= before, after + " after " + before + " in shop " + seed);
      shorter += after < before ? 1 : 0;
    }
    assertTrue(shorter > 30, shorter + " shorter");
  }

  @Test
  void anOrderThatStretchesBackwardsBeyondTheHorizonIsLeftAsItIs() {
    int stretched = 0;
    for (long seed = 0; seed < 300; seed++) {
      Shop shop = tied(new Random(seed), shortest(tied(new Random(seed), 10_000), seed));
      Decodes decodes = Decodes.of(shop);
      Justification justification = justification(shop).orElseThrow();
      Trials trials =
          new Trials(new Tables(shop), Budget.ofSchedules(1000), Optional.empty(), report -> {});
      Random random = new Random(seed);
      for (int i = 0; i < ORDERS; i++) {
        int[] order = decodes.shuffled(random);
        if (decodes.decode(order).isPresent()
            && !justification.backAndForth(decodes.decoder().timetable())) {
          int[] refined = order.clone();
          trials.refine(refined);
          assertArrayEquals(order, refined);
          stretched++;
        }
      }
    }
    assertTrue(stretched > 0, "none of them stretches");
  }

  @Test
  void onlyAShopThatCanBeRunBackwardsIsJustified() {
    assertTrue(justification(due(chain(minute(), minute())).shop()).isPresent());
    assertTrue(justification(chain(minute()).shop()).isEmpty());
    assertTrue(justification(due(due(chain(minute()))).shop()).isEmpty());
    assertTrue(justification(due(chain(minute().by(0))).shop()).isEmpty());
    assertTrue(justification(due(chain(minute(), minute().within(5))).shop()).isEmpty());
    assertTrue(justification(due(chain(minute(), minute().after(0, 1))).shop()).isEmpty());
    Hold untilDone = new Hold(0, 1, 0, Hold.Until.DONE);
    assertTrue(justification(due(chain(minute().holding(untilDone))).shop()).isEmpty());
    ShopDraft two = new ShopDraft().kind(2, minute());
    assertTrue(justification(due(two).shop()).isEmpty());
  }

  private static Optional<Justification> justification(Shop shop) {
    Tables tables = new Tables(shop);
    return Justification.of(tables, new Decoder(tables).claims());
  }

  private static ShopDraft chain(ActivityDraft... chain) {
    return new ShopDraft().worker().resource(1).kind(1, chain);
  }

  private static ShopDraft due(ShopDraft draft) {
    return draft.due(0, 1, new Due.Need(0, 1));
  }

  private static ActivityDraft minute() {
    return ActivityDraft.of(1);
  }

  private static Shop jobShop(Random random) {
    int[][] jobs = new int[4 + random.nextInt(4)][8];
    for (int[] job : jobs) {
      for (int i = 0; i < 4; i++) {
        job[2 * i] = random.nextInt(4);
        job[2 * i + 1] = 1 + random.nextInt(20);
      }
    }
    return Published.jobShop(jobs);
  }

  private static Shop project(Random random) {
    int count = 10 + random.nextInt(10);
    int[] minutes = random.ints(count, 1, 15).toArray();
    int[][] uses =
        IntStream.range(0, count)
            .mapToObj(i -> random.ints(2, 0, 4).toArray())
            .toArray(int[][]::new);
    int[][] links =
        IntStream.range(1, count)
            .mapToObj(i -> new int[] {random.nextInt(i), i})
            .toArray(int[][]::new);
    return Published.project(minutes, uses, links, new int[] {4, 5});
  }

  /** The least makespan of a few orders. */
  private static int shortest(Shop shop, long seed) {
    Decodes decodes = Decodes.of(shop);
    Random random = new Random(seed);
    long shortest = Long.MAX_VALUE;
    for (int i = 0; i < ORDERS; i++) {
      shortest = Math.min(shortest, decodes.valueOf(decodes.shuffled(random)).late());
    }
    return (int) shortest;
  }

  /** Jobs whose activities are tied by machines that are held across several of them. */
  private static Shop tied(Random random, int horizon) {
    int machines = 3;
    ShopDraft draft = new ShopDraft().horizon(horizon);
    IntStream.range(0, machines).forEach(i -> draft.resource(1));
    Due.Need[] needs = new Due.Need[3 + random.nextInt(5)];
    for (int kind = 0; kind < needs.length; kind++) {
      ActivityDraft[] chain = new ActivityDraft[1 + random.nextInt(machines)];
      int first = random.nextInt(machines);
      for (int i = 0; i < chain.length; i++) {
        int last = i + random.nextInt(chain.length - i);
        chain[i] = ActivityDraft.of(1 + random.nextInt(10));
        chain[i].holding((first + i) % machines, 1, last);
      }
      draft.kind(1, chain);
      needs[kind] = new Due.Need(kind, 1);
      if (kind > 0 && random.nextInt(3) == 0) {
        draft.link(random.nextInt(kind), kind, random.nextInt(4));
      }
    }
    return draft.due(0, 1, needs).shop();
  }
}
