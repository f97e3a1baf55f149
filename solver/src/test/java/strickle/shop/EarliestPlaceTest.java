package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A job tied together by most-waits and holds is placed at the earliest minutes that hold together,
 * found here by trying all of them. With one worker for each activity the earliest starts are
 * earliest for every activity at once.
 */
class EarliestPlaceTest {

  private static final int SHOPS = 600;
  private static final int HORIZON = 150;

  /** The resource that the tied job holds from its start to its end. */
  private static final int WHOLE = 3;

  @Test
  void aTiedJobIsPlacedAtTheEarliestMinutesThatHoldTogether() {
    int placed = 0;
    for (long seed = 0; seed < SHOPS; seed++) {
      Shop shop = shop(new Random(seed));
      Decodes decodes = Decodes.of(shop);
      int[] order = decodes.inOrder();
      Optional<Schedule> schedule = decodes.decode(order);
      int[] others = Arrays.copyOf(order, order.length - 1);
      Schedule before = Decodes.of(withoutLast(shop)).decode(others).orElseThrow();
      Optional<List<Integer>> starts = new EveryMinute(shop, before).starts();
      assertEquals(starts, schedule.map(EarliestPlaceTest::startsOfLast), "shop " + seed);
      placed += starts.isPresent() ? 1 : 0;
    }
    assertTrue(placed > SHOPS / 2 && placed < SHOPS, placed + " of " + SHOPS);
  }

  private static List<Integer> startsOfLast(Schedule schedule) {
    Schedule.Lot lot = schedule.lots().get(schedule.lots().size() - 1);
    List<Integer> starts = new ArrayList<>(List.of(lot.first().start()));
    lot.runs().get(0).rest().forEach(place -> starts.add(place.start()));
    return starts;
  }

  /** Single activities that are in the way, and last a chain that is tied. */
  private static Shop shop(Random random) {
    ShopDraft draft = new ShopDraft().horizon(HORIZON).worker(hours(random)).worker(hours(random));
    draft.resource(1).resource(1).resource(1).resource(1);
    for (int i = 1 + random.nextInt(8); i > 0; i--) {
      int minutes = 1 + random.nextInt(8);
      ActivityDraft one = ActivityDraft.of(minutes).holding(random.nextInt(WHOLE + 1), 1, 0);
      // Nobody waits where the resource is held: a link from a job of no use puts it later.
      draft.kind(1, ActivityDraft.of(random.nextInt(HORIZON / 2))).kind(1, one);
      draft.link(draft.kinds() - 2, draft.kinds() - 1, 0);
    }
    draft.kind(1, ActivityDraft.of(1 + random.nextInt(9)).by(random.nextInt(2)));
    return draft.kind(1, chain(random)).shop();
  }

  private static Calendar hours(Random random) {
    int[] opens = new int[4];
    int[] closes = new int[4];
    for (int i = 0; i < 4; i++) {
      opens[i] = i * 36 + random.nextInt(14);
      closes[i] = opens[i] + 10 + random.nextInt(12);
    }
    return Calendar.of(opens, closes);
  }

  private static ActivityDraft[] chain(Random random) {
    ActivityDraft[] chain = new ActivityDraft[2 + random.nextInt(2)];
    for (int i = 0; i < chain.length; i++) {
      chain[i] = ActivityDraft.of(1 + random.nextInt(8));
      if (random.nextInt(4) > 0) {
        chain[i].by(random.nextInt(2));
        chain[i] = random.nextBoolean() ? chain[i].pausing() : chain[i];
      }
      if (i > 0) {
        chain[i].after(0, random.nextInt(10) / 60.0);
        chain[i] = random.nextBoolean() ? chain[i].within(random.nextInt(30)) : chain[i];
      }
      int last = i + random.nextInt(chain.length - i);
      Hold.Until until = last == i || random.nextBoolean() ? Hold.Until.END : Hold.Until.START;
      chain[i].holding(new Hold(i, 1, last, until));
    }
    chain[0].holding(WHOLE, 1, chain.length - 1);
    return chain;
  }

  private static Shop withoutLast(Shop shop) {
    List<Kind> kinds = shop.kinds().subList(0, shop.kinds().size() - 1);
    return new Shop(
        shop.horizonMinutes(),
        shop.lateUnitMinutes(),
        shop.workers(),
        shop.clocks(),
        shop.resources(),
        shop.families(),
        kinds,
        shop.links(),
        List.of(),
        List.of());
  }
}
