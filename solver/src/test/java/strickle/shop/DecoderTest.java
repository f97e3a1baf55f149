package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The decoder in small: what each part of an order says, and what it costs. */
class DecoderTest {

  private static final int DECODES = 10_000;

  /** What reading the counter itself may allocate, far less than a byte for each decode. */
  private static final long NEXT_TO_NOTHING = 4096;

  private static final Family BATCH = new Family("batch", 10, 4, List.of(3L), 60);

  @Test
  void theSameOrderTwiceIsTheSameSchedule() {
    for (long seed = 0; seed < 100; seed++) {
      Decodes decodes = Decodes.of(RandomShop.of(seed).shop());
      Random random = new Random(seed);
      int[] order = decodes.shuffled(random);
      Optional<Schedule> once = decodes.decode(order);
      decodes.decode(decodes.shuffled(random));
      assertEquals(once, decodes.decode(order), "shop " + seed);
      assertEquals(once, Decodes.of(RandomShop.of(seed).shop()).decode(order), "shop " + seed);
    }
  }

  @Test
  void oneDecodingAfterAnotherAllocatesNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().threadId();
    for (long seed : new long[] {4, 9, 16, 25}) {
      Decodes decodes = Decodes.of(RandomShop.of(seed).shop());
      Random random = new Random(seed);
      int[][] orders = new int[50][];
      for (int i = 0; i < orders.length; i++) {
        orders[i] = decodes.shuffled(random);
      }
      long sum = decodeAll(decodes.decoder(), orders, orders.length);
      long before = threads.getThreadAllocatedBytes(thread);
      sum += decodeAll(decodes.decoder(), orders, DECODES);
      long allocated = threads.getThreadAllocatedBytes(thread) - before;
      assertTrue(allocated <= NEXT_TO_NOTHING, allocated + " bytes in shop " + seed);
      assertTrue(sum > 0, "nothing was decoded in shop " + seed);
    }
  }

  @Test
  void everyDecodingCounts() {
    Decodes decodes = Decodes.of(new ShopDraft().kind(3, ActivityDraft.of(1)).shop());
    decodes.decode(0, 1, 2);
    decodes.decode(2, 1, 0);
    assertEquals(2, decodes.decoder().decoded());
  }

  @Test
  void theListSaysWhoGoesFirst() {
    ShopDraft draft = new ShopDraft().resource(1);
    draft.kind(1, held(5)).kind(1, held(7)).kind(1, held(2));
    assertEquals(new Value(0, 0, 2 + 7 + 14), Decodes.of(draft.shop()).valueOf(2, 0, 1));
    assertEquals(new Value(0, 0, 7 + 12 + 14), Decodes.of(draft.shop()).valueOf(1, 0, 2));
  }

  @Test
  void whatComesLaterInTheListFillsGaps() {
    ShopDraft draft = new ShopDraft().resource(1);
    draft.kind(1, ActivityDraft.of(20), held2(5)).kind(1, held(20)).kind(1, held(1));
    Schedule schedule = Decodes.of(draft.shop()).decode(0, 1, 2, 3).orElseThrow();
    assertEquals(25, schedule.lots().get(0).runs().get(0).done());
    assertEquals(0, schedule.lots().get(1).first().start());
    assertEquals(25, schedule.lots().get(2).first().start());
  }

  @Test
  void laterPartsOfAJobHavePlacesOfTheirOwn() {
    ShopDraft draft = new ShopDraft().resource(1);
    draft.kind(1, held(5), held2(5)).kind(1, held(7));
    Decodes decodes = Decodes.of(draft.shop());
    assertEquals(10 + 17, decodes.valueOf(0, 1, 2).flow());
    assertEquals(12 + 17, decodes.valueOf(0, 2, 1).flow());
  }

  @Test
  void aPartAskedForBeforeItsTurnFollowsAtOnce() {
    ShopDraft draft = new ShopDraft().resource(1);
    draft.kind(1, held(5), held2(5)).kind(1, held(7));
    assertEquals(10 + 17, Decodes.of(draft.shop()).valueOf(1, 0, 2).flow());
  }

  @Test
  void neighboursOfAFamilyShareALotUpToItsLimits() {
    Decodes decodes = Decodes.of(batches().shop());
    // 10 shared and 5 for each: three jobs, then two.
    Schedule schedule = decodes.decode(0, 1, 2, 3, 4, 5, 6).orElseThrow();
    assertEquals(List.of(25, 20), minutes(schedule));
  }

  @Test
  void aBreakKeepsNeighboursApart() {
    Decodes decodes = Decodes.of(batches().shop());
    Schedule schedule = decodes.decode(0, 5, 1, 2, 3, 6, 4).orElseThrow();
    assertEquals(List.of(15, 25, 15), minutes(schedule));
  }

  @Test
  void anotherFamilyBetweenKeepsNeighboursApart() {
    Shop shop = batches().kind(1, ActivityDraft.of(1).by(0)).shop();
    Schedule schedule = Decodes.of(shop).decode(0, 1, 5, 2, 3, 4, 6, 7).orElseThrow();
    assertEquals(List.of(20, 1, 25), minutes(schedule));
  }

  @Test
  void aLotTooLargeForAnyWindowIsMadeSmaller() {
    ShopDraft draft = new ShopDraft().family(BATCH).worker(days(22));
    draft.kind(1, 3, List.of(1L), 0, ActivityDraft.of(0).each(5).by(0));
    Schedule schedule = Decodes.of(draft.shop()).decode(0, 1, 2, 3).orElseThrow();
    assertEquals(List.of(20, 15), minutes(schedule));
  }

  @Test
  void waitsBeginBeforeALotsTail() {
    ShopDraft draft = new ShopDraft().family(BATCH).worker().worker();
    draft.kind(1, 1, List.of(1L), 0, ActivityDraft.of(0).each(5).by(0), next());
    Schedule schedule = Decodes.of(draft.shop()).decode(0, 1).orElseThrow();
    assertEquals(11 + 30, schedule.lots().get(0).runs().get(0).rest().get(0).start());
  }

  @Test
  void aHoldUntilTheNextActivityMayEndInALotsTail() {
    ShopDraft draft = new ShopDraft().family(BATCH).worker().worker().resource(1);
    draft.kind(1, ActivityDraft.of(6), held2(20));
    Hold untilNext = new Hold(0, 1, 1, Hold.Until.START);
    ActivityDraft pour = ActivityDraft.of(0).by(0).holding(untilNext);
    draft.kind(1, 1, List.of(1L), 0, pour, ActivityDraft.of(5).by(1));
    Schedule.Lot lot = Decodes.of(draft.shop()).decode(0, 1, 2).orElseThrow().lots().get(1);
    // The resource is taken from minute 6 on; the pour ends at 10, and its last 4 are its tail.
    assertEquals(0, lot.first().start());
    assertEquals(6, lot.runs().get(0).rest().get(0).start());
  }

  @Test
  void amongSeveralTheOneWhoEndsFirstDoesIt() {
    Calendar late = Calendar.of(new int[] {50}, new int[] {100});
    Calendar gappy = Calendar.of(new int[] {0, 90}, new int[] {10, 200});
    ShopDraft draft = new ShopDraft().worker(gappy).worker(late);
    draft.kind(1, ActivityDraft.of(20).by(0, 1).pausing());
    Schedule.Placed place = Decodes.of(draft.shop()).decode(0).orElseThrow().lots().get(0).first();
    assertEquals(new Schedule.Placed(1, 0, 20, 50, 70), place);
  }

  @Test
  void aTaskThatMayNotPauseWaitsForAWindowLongEnough() {
    Calendar gappy = Calendar.of(new int[] {0, 90}, new int[] {10, 200});
    ShopDraft draft = new ShopDraft().worker(gappy).kind(1, ActivityDraft.of(20).by(0));
    Schedule.Placed place = Decodes.of(draft.shop()).decode(0).orElseThrow().lots().get(0).first();
    assertEquals(new Schedule.Placed(0, 10, 20, 90, 110), place);
  }

  private static long decodeAll(Decoder decoder, int[][] orders, int times) {
    long sum = 0;
    for (int i = 0; i < times; i++) {
      if (decoder.decode(orders[i % orders.length])) {
        sum += decoder.late() + decoder.flow() + decoder.timetable().attended;
      }
    }
    return sum;
  }

  private static ShopDraft batches() {
    ShopDraft draft = new ShopDraft().family(BATCH).worker();
    return draft.kind(1, 5, List.of(1L), 0, ActivityDraft.of(0).each(5).by(0));
  }

  /** A hundred windows of so many minutes, two hundred minutes apart. */
  private static Calendar days(int minutes) {
    int[] opens = new int[100];
    int[] closes = new int[100];
    for (int day = 0; day < opens.length; day++) {
      opens[day] = day * 200;
      closes[day] = day * 200 + minutes;
    }
    return Calendar.of(opens, closes);
  }

  private static List<Integer> minutes(Schedule schedule) {
    return schedule.lots().stream().map(lot -> lot.first().minutes()).toList();
  }

  private static ActivityDraft next() {
    return ActivityDraft.of(8).by(1).after(0, 0.5);
  }

  private static ActivityDraft held(int minutes) {
    return ActivityDraft.of(minutes).holding(0, 1, 0);
  }

  /** As {@link #held}, as the second activity of its chain. */
  private static ActivityDraft held2(int minutes) {
    return ActivityDraft.of(minutes).holding(0, 1, 1);
  }
}
