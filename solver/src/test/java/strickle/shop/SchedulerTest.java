package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search: repeatable, within its budget, to be stopped at any moment, keeping its best. */
class SchedulerTest {

  /** Far longer than any of these searches takes; only one that never ends is told by it. */
  private static final Duration FOREVER = Duration.ofSeconds(20);

  @ParameterizedTest
  @ValueSource(longs = {1, 4, 9, 16, 25})
  void theSameShopSeedAndNumberGiveTheSameSchedule(long seed) {
    Shop shop = RandomShop.of(seed).shop();
    assertEquals(search(shop, 300, seed), search(RandomShop.of(seed).shop(), 300, seed));
  }

  @Test
  void anotherSeedTakesAnotherWay() {
    List<List<Long>> ways = new ArrayList<>();
    for (long seed = 0; seed < 2; seed++) {
      List<Long> way = new ArrayList<>();
      new Scheduler(
              weighted(30), Budget.ofSchedules(500), seed, report -> way.add(report.schedules()))
          .run();
      ways.add(way);
    }
    assertNotEquals(ways.get(0), ways.get(1));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 5, 10, 17, 100, 1000})
  void theNumberOfSchedulesIsNeverExceeded(long most) {
    Shop[] shops = {weighted(20), reversible(), RandomShop.of(4).shop(), RandomShop.of(9).shop()};
    for (Shop shop : shops) {
      List<Report> reports = new ArrayList<>();
      Schedule best = new Scheduler(shop, Budget.ofSchedules(most), 0, reports::add).run();
      assertTrue(best.schedules() <= most, best.schedules() + " of " + most);
      assertTrue(reports.get(reports.size() - 1).schedules() <= best.schedules());
    }
  }

  @Test
  void theNumberOfSchedulesIsUsed() {
    assertEquals(1000, search(weighted(20), 1000, 0).schedules());
  }

  @Test
  void aShopWithTwoOrdersOnlyComesToAnEndToo() {
    Schedule best = assertTimeoutPreemptively(FOREVER, () -> search(weighted(2), 1000, 0));
    assertTrue(best.schedules() <= 1000);
  }

  @Test
  void aShopWithOneOrderIsDone() {
    assertEquals(1, search(weighted(1), 1000, 0).lots().size());
  }

  /** One job, and all it is made of can be put in any order, which changes nothing. */
  @Test
  void aShopOfOneJobIsReadyAtOnceHoweverMuchTimeThereIs() {
    Shop shop =
        new ShopDraft()
            .worker()
            .kind(
                1, ActivityDraft.of(10).by(0), ActivityDraft.of(5).by(0), ActivityDraft.of(7).by(0))
            .shop();
    Schedule best = assertTimeoutPreemptively(FOREVER, () -> search(shop, Duration.ofHours(1)));
    assertEquals(22, best.value().attended());
    assertTrue(best.schedules() < 100, best.schedules() + " schedules");
  }

  @Test
  void whenEveryOrderOfAFewClaimsHasBeenTriedTheSearchIsOver() {
    Schedule best =
        assertTimeoutPreemptively(FOREVER, () -> search(weighted(6), Duration.ofHours(1)));
    assertEquals(search(weighted(6), 100_000, 0).value(), best.value());
  }

  @Test
  void whereAllOrdersTakeMoreSchedulesThanThereMayBeTheyAreSearchedAsEver() {
    assertEquals(700, search(weighted(6), 700, 0).schedules());
  }

  @Test
  void aShopOfNothingHasAScheduleOfNothing() {
    Schedule best = search(new ShopDraft().due(5, 1).shop(), 1000, 0);
    assertEquals(new Value(0, 0, 0), best.value());
    assertEquals(List.of(), best.lots());
    assertEquals(List.of(0), best.met());
  }

  @Test
  void everyReportIsBetterThanTheOneBeforeAndTheLastIsTheBest() {
    List<Report> reports = new ArrayList<>();
    Schedule best = new Scheduler(weighted(30), Budget.ofSchedules(2000), 0, reports::add).run();
    for (int i = 1; i < reports.size(); i++) {
      assertTrue(reports.get(i).best().compareTo(reports.get(i - 1).best()) < 0);
      assertTrue(reports.get(i).schedules() > reports.get(i - 1).schedules());
    }
    assertTrue(reports.size() > 2);
    assertEquals(best.value(), reports.get(reports.size() - 1).best());
  }

  @Test
  void aSearchIsNoWorseThanTheOrdersItBeginsWith() {
    Value begun = search(weighted(30), 20, 0).value();
    for (int schedules : new int[] {100, 400, 4000}) {
      Value now = search(weighted(30), schedules, 0).value();
      assertTrue(now.compareTo(begun) <= 0, schedules + ": " + now + " after " + begun);
    }
  }

  @Test
  void whatIsFoundKeepsTheRules() {
    for (long seed = 0; seed < 25; seed++) {
      RandomShop random = RandomShop.of(seed);
      try {
        Schedule best = search(random.shop(), 100, seed);
        assertEquals(List.of(), Rules.broken(random.shop(), random.paces(), best), "shop " + seed);
      } catch (NoRoomException none) {
        assertEquals(Optional.empty(), Scheduler.first(random.shop()), "shop " + seed);
      }
    }
  }

  @Test
  void withoutRoomThereIsNoSchedule() {
    Shop shop = new ShopDraft().horizon(99).resource(1).kind(10, machined(10)).shop();
    NoRoomException none = assertThrows(NoRoomException.class, () -> search(shop, 100, 0));
    assertEquals(-1, none.settledLot());
    assertEquals(Optional.empty(), Scheduler.first(shop));
    assertTrue(none.getMessage().contains("horizon"), none.getMessage());
  }

  @Test
  void justEnoughRoomIsRoom() {
    Shop shop = new ShopDraft().horizon(100).resource(1).kind(10, machined(10)).shop();
    assertEquals(550, search(shop, 100, 0).value().flow());
    assertTrue(Scheduler.first(shop).isPresent());
  }

  @Test
  void theSettledLotWithoutRoomIsNamed() {
    Shop shop =
        new ShopDraft()
            .worker(Calendar.of(new int[] {0, 500}, new int[] {100, 600}))
            .kind(2, ActivityDraft.of(10).by(0), ActivityDraft.of(10).by(0).within(20))
            .fixed(0, 0, new FixedLot.Part(0, 1))
            .fixed(0, 90, new FixedLot.Part(0, 1))
            .shop();
    NoRoomException none = assertThrows(NoRoomException.class, () -> search(shop, 100, 0));
    assertEquals(1, none.settledLot());
    assertTrue(none.getMessage().contains("settled lot 1"), none.getMessage());
  }

  @Test
  void stopEndsALongSearchAndKeepsTheBest() throws Exception {
    CountDownLatch found = new CountDownLatch(1);
    List<Report> reports = new ArrayList<>();
    Consumer<Report> listener =
        report -> {
          reports.add(report);
          found.countDown();
        };
    Scheduler scheduler =
        new Scheduler(weighted(30), Budget.ofTime(Duration.ofHours(1)), 0, listener);
    CompletableFuture<Schedule> running = CompletableFuture.supplyAsync(scheduler::run);
    assertTrue(found.await(FOREVER.toSeconds(), TimeUnit.SECONDS));
    scheduler.stop();
    Schedule best = running.get(FOREVER.toSeconds(), TimeUnit.SECONDS);
    assertEquals(reports.get(reports.size() - 1).best(), best.value());
    assertEquals(List.of(), Rules.broken(weighted(30), List.of(Pace.WALL), best));
  }

  @Test
  void stoppedBeforeItBeginsItStillHasASchedule() {
    Scheduler scheduler =
        new Scheduler(weighted(30), Budget.ofTime(Duration.ofHours(1)), 0, report -> {});
    scheduler.stop();
    Schedule best = assertTimeoutPreemptively(FOREVER, scheduler::run);
    assertEquals(30, best.lots().size());
  }

  @Test
  void aShortTimeIsEnoughForASchedule() {
    Budget budget = Budget.ofTime(Duration.ofMillis(1));
    Schedule best =
        assertTimeoutPreemptively(
            FOREVER, () -> new Scheduler(weighted(30), budget, 0, report -> {}).run());
    assertEquals(30, best.lots().size());
  }

  @Test
  void theFirstScheduleTakesNoSearch() {
    Schedule first = Scheduler.first(weighted(5)).orElseThrow();
    assertEquals(1, first.schedules());
    assertFalse(first.value().compareTo(search(weighted(5), 1000, 0).value()) < 0);
    assertEquals(
        List.of(0, 1, 2, 3, 4),
        first.lots().stream().map(lot -> lot.runs().get(0).kind()).toList());
  }

  private static Schedule search(Shop shop, long schedules, long seed) {
    return new Scheduler(shop, Budget.ofSchedules(schedules), seed, report -> {}).run();
  }

  private static Schedule search(Shop shop, Duration time) {
    return new Scheduler(shop, Budget.ofTime(time), 0, report -> {}).run();
  }

  /** One machine and jobs of every length, weight and due date. */
  private static Shop weighted(int jobs) {
    int[] minutes = new int[jobs];
    int[] weights = new int[jobs];
    int[] dues = new int[jobs];
    for (int i = 0; i < jobs; i++) {
      minutes[i] = 5 + i * 7 % 11;
      weights[i] = 1 + i * 5 % 7;
      dues[i] = i * 37 % 150;
    }
    return Published.oneMachine(minutes, weights, dues);
  }

  /** A shop that can be run backwards. */
  private static Shop reversible() {
    return Published.flowShop(
        new int[][] {{5, 2, 3}, {2, 6, 1}, {1, 2, 8}, {7, 5, 4}, {6, 6, 2}, {3, 7, 5}});
  }

  private static ActivityDraft machined(int minutes) {
    return ActivityDraft.of(minutes).holding(0, 1, 0);
  }
}
