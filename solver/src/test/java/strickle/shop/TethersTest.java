package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Links that go back: least and most lags, in circles too. */
class TethersTest {

  private static final int HORIZON = 30;

  @Test
  void everyOrderIsAScheduleThatKeepsAllLags() {
    int roomy = 0;
    for (long seed = 0; seed < 300; seed++) {
      Shop shop = RandomTethers.of(seed, 4 + (int) (seed % 9)).shop();
      Decodes decodes = Decodes.of(shop);
      Random chance = new Random(seed);
      for (int i = 0; i < 5; i++) {
        Optional<Schedule> schedule = decodes.decode(decodes.shuffled(chance));
        roomy += schedule.isPresent() ? 1 : 0;
        String name = "shop " + seed;
        schedule.ifPresent(
            one -> assertEquals(List.of(), Rules.broken(shop, List.of(Pace.WALL), one), name));
      }
    }
    assertTrue(roomy > 500, roomy + " schedules");
  }

  @Test
  void theSearchFindsTheLeastMakespanOfAllStarts() {
    int found = 0;
    int none = 0;
    for (long seed = 0; seed < 120; seed++) {
      RandomTethers random = RandomTethers.of(seed, 4 + (int) (seed % 2));
      int least = random.leastMakespan(HORIZON);
      if (least > HORIZON) {
        assertThrows(NoRoomException.class, () -> best(random.shop(), 300), "shop " + seed);
        none++;
      } else {
        assertEquals(least, best(random.shop(), 300).value().late(), "shop " + seed);
        found++;
      }
    }
    assertTrue(found > 50 && none > 5, found + " found, " + none + " without a schedule");
  }

  @Test
  void tetheredJobsShareAShopWithAllOthers() {
    int roomy = 0;
    for (long seed = 0; seed < 200; seed++) {
      RandomShop random = RandomShop.of(seed);
      Shop shop = withTethers(random.shop());
      Decodes decodes = Decodes.of(shop);
      Optional<Schedule> schedule = decodes.decode(decodes.shuffled(new Random(seed)));
      roomy += schedule.isPresent() ? 1 : 0;
      String name = "shop " + seed;
      schedule.ifPresent(
          one -> assertEquals(List.of(), Rules.broken(shop, random.paces(), one), name));
    }
    assertTrue(roomy > 150, roomy + " schedules");
  }

  /** Three more jobs, two on the first resource; the last starts 5 to 9 after the first. */
  private static Shop withTethers(Shop shop) {
    List<Kind> kinds = new ArrayList<>(shop.kinds());
    int first = kinds.size();
    for (int minutes : new int[] {7, 0, 30}) {
      List<Hold> holds = minutes == 0 ? List.of() : List.of(Hold.during(0, 1, 0));
      Activity only = new Activity("tethered", minutes, 0, List.of(), false, Wait.NONE, holds);
      kinds.add(new Kind("tethered " + minutes, 0, 1, List.of(1L), List.of(only), 0));
    }
    List<Link> links =
        List.of(
            new Link(first, first + 1, -2),
            new Link(first + 1, first, -9),
            new Link(first + 1, first + 2, 3),
            new Link(first + 2, first + 1, -60));
    return new Shop(
        shop.horizonMinutes(),
        shop.lateUnitMinutes(),
        shop.workers(),
        shop.clocks(),
        shop.resources(),
        shop.families(),
        kinds,
        links,
        shop.dues(),
        shop.fixed());
  }

  // By hand: 1 starts 2 or more after 0, and 1 at most; 1 starts 2 to 3 after 0, but as they run
  // one
  // by one, 4 or more; 1 starts at most 25 after 0, but after 2, which starts 35 after 0.
  @Test
  void lagsThatContradictEachOtherLeaveNoSchedule() {
    Stream.of(
            machined(1, 1).link(0, 1, 1).link(1, 0, -2),
            machined(4, 1).link(0, 1, -2).link(1, 0, -4),
            machined(5, 5, 1).link(1, 0, -30).link(0, 2, 30).link(2, 1, 0))
        .map(ShopDraft::shop)
        .forEach(
            shop -> {
              assertTrue(new Tables(shop).distances.contradictory);
              assertEquals(Optional.empty(), Scheduler.first(shop));
              assertThrows(NoRoomException.class, () -> best(shop, 50));
            });
  }

  @Test
  void whatRunsOneByOneMayBeLagged() {
    Shop shop = machined(4, 1).link(0, 1, -2).link(1, 0, -5).due(0, 1, need(0), need(1)).shop();
    assertEquals(5, best(shop, 50).value().late());
  }

  // Made up, by hand: 2 needs both units and starts 3 to 5 after 0; 1 takes one of them for 9. Once
  // 1 is in its place, 2 comes at 9, so that 0, which was at 0, may not start before 4.
  @Test
  void whatSetTheLatestStartIsPlacedAgainLater() {
    Decodes decodes =
        Decodes.of(
            new ShopDraft()
                .resource(2)
                .kind(1, ActivityDraft.of(1))
                .kind(1, ActivityDraft.of(9).holding(0, 1, 0))
                .kind(1, ActivityDraft.of(2).holding(0, 2, 0))
                .link(0, 2, 2)
                .link(2, 0, -7)
                .shop());
    assertEquals(List.of(4, 0, 9), starts(decodes.decode(0, 1, 2)));
    assertEquals(List.of(4, 0, 9), starts(decodes.decode(1, 2, 0)));
    assertEquals(List.of(4, 0, 9), starts(decodes.decode(2, 1, 0)));
    assertEquals(List.of(0, 5, 3), starts(decodes.decode(0, 2, 1)));
    assertEquals(List.of(0, 5, 3), starts(decodes.decode(2, 0, 1)));
    assertEquals(8, decodes.decoder().decoded(), "three jobs placed again count as a schedule");
  }

  private static List<Integer> starts(Optional<Schedule> schedule) {
    return schedule.orElseThrow().lots().stream()
        .sorted(Comparator.comparingInt(lot -> lot.runs().get(0).kind()))
        .map(lot -> lot.first().start())
        .toList();
  }

  @Test
  void theSameSeedGivesTheSameSchedule() {
    Shop shop = RandomTethers.of(27, 12).shop();
    assertEquals(best(shop, 400), best(shop, 400));
  }

  @Test
  void aSearchFindsWhatTheOrdersItBeginsWithDoNot() {
    Shop shop = RandomTethers.of(333, 30).shop();
    assertThrows(NoRoomException.class, () -> best(shop, 8));
    best(shop, 500);
  }

  // By hand: any two of the three may run side by side, and the third has to start within a minute
  // of both, but comes only when they have ended.
  @Test
  void anOrderWithoutAScheduleSaysByHowManyMinutesItIsTooLate() {
    for (int minutes = 2; minutes < 9; minutes++) {
      ShopDraft draft = new ShopDraft().resource(2);
      for (int kind = 0; kind < 3; kind++) {
        draft.kind(1, ActivityDraft.of(minutes).holding(0, 1, 0));
      }
      for (int kind = 0; kind < 3; kind++) {
        draft.link(kind, (kind + 1) % 3, -minutes - 1).link((kind + 1) % 3, kind, -minutes - 1);
      }
      Decodes decodes = Decodes.of(draft.shop());
      assertEquals(Optional.empty(), decodes.decode(0, 1, 2));
      assertEquals(minutes - 1, decodes.decoder().missing());
      assertThrows(NoRoomException.class, () -> best(draft.shop(), 50));
    }
  }

  @Test
  void oneDecodingAfterAnotherAllocatesNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().threadId();
    Decodes decodes = Decodes.of(RandomTethers.of(27, 12).shop());
    Random random = new Random(1);
    int[][] orders = new int[50][];
    Arrays.setAll(orders, i -> decodes.shuffled(random));
    for (int[] order : orders) {
      decodes.decoder().decode(order);
    }
    long before = threads.getThreadAllocatedBytes(thread);
    for (int i = 0; i < 5000; i++) {
      decodes.decoder().decode(orders[i % orders.length]);
    }
    long allocated = threads.getThreadAllocatedBytes(thread) - before;
    assertTrue(allocated < 5000, allocated + " bytes");
  }

  private static Due.Need need(int kind) {
    return new Due.Need(kind, 1);
  }

  private static ShopDraft machined(int... minutes) {
    ShopDraft draft = new ShopDraft().resource(1);
    for (int each : minutes) {
      draft.kind(1, ActivityDraft.of(each).holding(0, 1, 0));
    }
    return draft;
  }

  private static Schedule best(Shop shop, int schedules) {
    Schedule best = new Scheduler(shop, Budget.ofSchedules(schedules), 0, report -> {}).run();
    assertEquals(List.of(), Rules.broken(shop, List.of(Pace.WALL), best));
    return best;
  }
}
