package strickle.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever the order, the decoder's schedule keeps every rule. */
class DecoderRulesTest {

  private static final int SHOPS = 400;
  private static final int ORDERS = 4;

  @Test
  void everyOrderOfEveryShopIsAScheduleThatKeepsAllRules() {
    int roomy = 0;
    for (long seed = 0; seed < SHOPS; seed++) {
      RandomShop random = RandomShop.of(seed);
      Decodes decodes = Decodes.of(random.shop());
      Random chance = new Random(seed);
      for (int i = 0; i < ORDERS; i++) {
        Optional<Schedule> schedule = decodes.decode(decodes.shuffled(chance));
        roomy += schedule.isPresent() ? 1 : 0;
        String shop = "shop " + seed;
        schedule.ifPresent(
            one -> assertEquals(List.of(), Rules.broken(random.shop(), random.paces(), one), shop));
      }
    }
    assertTrue(roomy > SHOPS * ORDERS * 4 / 5, roomy + " schedules");
  }
}
