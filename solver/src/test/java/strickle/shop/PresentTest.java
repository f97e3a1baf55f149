package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PresentTest {

  /** Enough to find the way back to a schedule, far too few to find it again by searching. */
  private static final Budget FEW = Budget.ofSchedules(60);

  private static Value beginningFrom(Shop shop, List<Schedule.Lot> present) {
    return new Scheduler(shop, FEW, 0, present, report -> {}).run().value();
  }

  /** The best of a thousand random orders, which no good order to begin with leads to. */
  private static Optional<Schedule> good(Shop shop, long seed) {
    Decodes decodes = Decodes.of(shop);
    Random random = new Random(seed);
    Optional<Schedule> best = Optional.empty();
    for (int i = 0; i < 1000; i++) {
      Optional<Schedule> found = decodes.decode(decodes.shuffled(random));
      boolean better =
          found.isPresent()
              && (best.isEmpty() || found.get().value().compareTo(best.get().value()) < 0);
      best = better ? found : best;
    }
    return best;
  }

  @Test
  void beginningFromAScheduleLeadsBackToItFromNearlyEveryOne() {
    List<String> lost = new ArrayList<>();
    int shops = 0;
    for (long seed = 0; seed < 150; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      Optional<Schedule> present = good(shop, seed);
      if (present.isPresent()) {
        shops++;
        Value again = beginningFrom(shop, present.get().lots());
        if (again.compareTo(present.get().value()) > 0) {
          lost.add("shop " + seed + ": " + present.get().value() + " became " + again);
        }
      }
    }
    assertTrue(shops > 100, shops + " shops with room");
    assertTrue(lost.size() * 20 < shops, lost.toString());
  }

  @Test
  void jobsThatTheScheduleDoesNotHaveAreLaidOutToo() {
    int further = 0;
    for (long seed = 0; seed < 150; seed++) {
      Shop shop = RandomShop.of(seed).shop();
      Optional<Schedule> whole = good(shop, seed);
      if (whole.isPresent() && whole.get().lots().size() > 2) {
        List<Schedule.Lot> half = whole.get().lots().subList(0, whole.get().lots().size() / 2);
        Schedule found = new Scheduler(shop, FEW, 0, half, report -> {}).run();
        int jobs =
            found.lots().stream()
                .flatMap(lot -> lot.runs().stream())
                .mapToInt(Schedule.Run::jobs)
                .sum();
        assertEquals(shop.jobs(), jobs, "shop " + seed);
        further++;
      }
    }
    assertTrue(further > 50, further + " shops with more than two lots");
  }

  @Test
  void jobsThatTheShopNoLongerHasAreLeftOut() {
    Shop more =
        new ShopDraft()
            .worker(Calendar.always(1000))
            .family(Family.alone())
            .kind(0, 3, List.of(1L), 0, ActivityDraft.of(0).each(10).by(0))
            .due(0, 1, new Due.Need(0, 3))
            .shop();
    Shop fewer =
        new ShopDraft()
            .worker(Calendar.always(1000))
            .family(Family.alone())
            .kind(0, 2, List.of(1L), 0, ActivityDraft.of(0).each(10).by(0))
            .due(0, 1, new Due.Need(0, 2))
            .shop();
    Schedule present = Scheduler.first(more).orElseThrow();
    Schedule found = new Scheduler(fewer, FEW, 0, present.lots(), report -> {}).run();
    assertEquals(2, found.lots().size());
  }
}
