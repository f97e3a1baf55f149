package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Orders that are good to begin with. */
class StartsTest {

  @Test
  void everyOrderHasEveryClaimOnce() {
    for (long seed = 0; seed < 200; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      int claims = Decodes.of(shop).claims();
      for (int[] order : orders(shop)) {
        int[] sorted = order.clone();
        Arrays.sort(sorted);
        assertArrayEquals(IntStream.range(0, claims).toArray(), sorted, "shop " + seed);
      }
    }
  }

  @Test
  void noOrderComesTwice() {
    for (long seed = 0; seed < 200; seed++) {
      Set<List<Integer>> seen = new HashSet<>();
      for (int[] order : orders(RandomShop.of(seed).shop())) {
        assertTrue(seen.add(Arrays.stream(order).boxed().toList()), "shop " + seed);
      }
    }
  }

  @Test
  void earliestDueIsAmongThem() {
    Shop shop =
        Published.oneMachine(
            new int[] {5, 1, 3, 2}, new int[] {1, 1, 1, 1}, new int[] {30, 10, 20, 5});
    assertHas(shop, 3, 1, 2, 0);
  }

  @Test
  void leastSlackIsAmongThem() {
    Shop shop =
        Published.oneMachine(
            new int[] {100, 1, 60, 2}, new int[] {1, 1, 1, 1}, new int[] {200, 150, 130, 180});
    assertHas(shop, 2, 0, 1, 3);
  }

  @Test
  void whatWaitsForAJobTakesSlackFromIt() {
    ShopDraft draft = new ShopDraft().kind(1, minutes(1)).kind(1, minutes(1)).kind(1, minutes(90));
    draft.link(1, 2, 5);
    assertHas(draft.shop(), 1, 2, 0);
  }

  @Test
  void theMostAskedForResourceIsAmongThem() {
    ShopDraft draft = new ShopDraft().resource(1).resource(1);
    draft.kind(1, minutes(10).holding(0, 1, 0)).kind(2, minutes(9).holding(1, 1, 0));
    draft.due(50, 1, new Due.Need(0, 1)).due(50, 1, new Due.Need(1, 2));
    assertHas(draft.shop(), 1, 2, 0);
  }

  @Test
  void jobsOfAFamilyAreDrawnTogether() {
    Family pairs = new Family("pairs", 5, 0, List.of(2L), Integer.MAX_VALUE);
    ShopDraft draft = new ShopDraft().family(pairs).family(pairs);
    for (int i = 0; i < 4; i++) {
      draft.kind(1 + i % 2, 1, List.of(1L), 0, minutes(5));
      draft.due(10 + i, 1, new Due.Need(i, 1));
    }
    // The two breaks are claims 4 and 5.
    assertHas(draft.shop(), 0, 1, 2, 3, 4, 5);
    assertHas(draft.shop(), 0, 2, 1, 3, 4, 5);
  }

  @Test
  void laterPartsComeRightBehindTheirFirstOrBehindEverybodysFirst() {
    ShopDraft draft = new ShopDraft();
    draft.kind(1, minutes(5), minutes(5)).kind(1, minutes(5), minutes(5));
    draft.due(50, 1, new Due.Need(0, 1)).due(60, 1, new Due.Need(1, 1));
    assertHas(draft.shop(), 0, 1, 2, 3);
    assertHas(draft.shop(), 0, 2, 1, 3);
  }

  @Test
  void aShopOfNothingHasAnOrderOfNothing() {
    List<int[]> orders = orders(new ShopDraft().kind(0, minutes(1)).shop());
    assertEquals(1, orders.size());
    assertEquals(0, orders.get(0).length);
  }

  private static void assertHas(Shop shop, int... order) {
    List<List<Integer>> orders =
        orders(shop).stream().map(one -> Arrays.stream(one).boxed().toList()).toList();
    assertTrue(
        orders.contains(Arrays.stream(order).boxed().toList()),
        Arrays.toString(order) + " not in " + orders);
  }

  private static List<int[]> orders(Shop shop) {
    Tables tables = new Tables(shop);
    return new Starts(tables, new Decoder(tables).claims()).orders();
  }

  private static ActivityDraft minutes(int minutes) {
    return ActivityDraft.of(minutes);
  }
}
