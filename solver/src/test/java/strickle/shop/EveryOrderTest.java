package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** In small shops the search finds the best of all orders there are. */
class EveryOrderTest {

  private static final int MOST_CLAIMS = 6;
  private static final int SCHEDULES = 1500;
  private static final Value NONE = new Value(Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE);

  @Test
  void theSearchFindsTheBestOfAllOrders() {
    int found = 0;
    for (long seed = 0; seed < 300 && found < 25; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      int claims = Decodes.of(shop).claims();
      if (claims >= 4 && claims <= MOST_CLAIMS) {
        Value best = bestOfAll(shop);
        if (best.equals(NONE)) {
          assertThrows(NoRoomException.class, () -> search(shop));
        } else {
          assertEquals(best, search(shop), "shop " + seed);
          found++;
        }
      }
    }
    assertTrue(found >= 15, found + " shops small enough");
  }

  private static Value search(Shop shop) {
    return new Scheduler(shop, Budget.ofSchedules(SCHEDULES), 0, report -> {}).run().value();
  }

  private static Value bestOfAll(Shop shop) {
    Decodes decodes = Decodes.of(shop);
    Value[] best = {NONE};
    Permutations.forEach(
        decodes.claims(),
        order -> {
          Value value = decodes.valueOf(order);
          best[0] = value.compareTo(best[0]) < 0 ? value : best[0];
        });
    return best[0];
  }
}
