package strickle.price.fair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import strickle.price.fair.Programme.Level;
import strickle.price.fair.Programme.Limit;
import strickle.price.fair.Programme.Side;

class ProgrammeTest {

  /** Packs of a material: what is used beyond the stock is bought, and money is limited. */
  private static final double PACK = 5;

  @Test
  void smallCasesAreAsGoodAsTheBestOfAllChoices() {
    for (int seed = 0; seed < 200; seed++) {
      Programme programme = made(new Random(seed));
      double best = enumerated(programme, 0, new ArrayList<>());
      assertEquals(best, programme.best().worth(), 1e-6, "seed " + seed);
      assertTrue(programme.relaxed() > best - 1e-6, "seed " + seed);
    }
  }

  @Test
  void theChoiceKeepsEveryLimit() {
    for (int seed = 100; seed < 120; seed++) {
      Programme programme = made(new Random(seed));
      List<Level> levels = programme.best().levels();
      assertTrue(keeps(programme, levels), "seed " + seed);
    }
  }

  @Test
  void aLimitThatNothingKeepsIsTold() {
    List<Level> item = List.of(new Level(1, 1, 5, List.of(2.0)));
    Programme none = new Programme(List.of(item), List.of(), List.of(new Limit(1)));
    assertThrows(IllegalStateException.class, none::best);
  }

  /** Three items, hours, and money for packs of a material. */
  private static Programme made(Random random) {
    List<List<Level>> items = new ArrayList<>();
    for (int item = 0; item < 3; item++) {
      double minutes = 10 + random.nextInt(20);
      double grams = 1 + random.nextInt(4);
      double top = 5 + random.nextInt(20);
      List<Level> levels = new ArrayList<>();
      double worth = 0;
      for (int k = 0; k <= 6; k++) {
        worth += k == 0 ? 0 : top / k - random.nextInt(2);
        levels.add(new Level(k, k, worth, List.of(minutes * k, grams * k, 0.0)));
      }
      items.add(levels);
    }
    double price = 3 + random.nextInt(4);
    Side packs = new Side(true, List.of(0.0, -PACK, price));
    double hours = 60 + random.nextInt(300);
    double money = random.nextInt(12);
    List<Limit> limits = List.of(new Limit(hours), new Limit(4), new Limit(money));
    return new Programme(items, List.of(packs), limits);
  }

  private static double enumerated(Programme programme, int item, List<Level> chosen) {
    if (item == programme.items().size()) {
      return keeps(programme, chosen)
          ? chosen.stream().mapToDouble(Level::worth).sum()
          : Double.NEGATIVE_INFINITY;
    }
    double best = Double.NEGATIVE_INFINITY;
    for (Level level : programme.items().get(item)) {
      List<Level> more = new ArrayList<>(chosen);
      more.add(level);
      best = Math.max(best, enumerated(programme, item + 1, more));
    }
    return best;
  }

  private static boolean keeps(Programme programme, List<Level> chosen) {
    double[] used =
        IntStream.range(0, 3)
            .mapToDouble(i -> chosen.stream().mapToDouble(level -> level.uses().get(i)).sum())
            .toArray();
    double short0 = Math.max(0, used[1] - programme.limits().get(1).most());
    double packs = Math.ceil(short0 / PACK - 1e-9);
    double spent = packs * programme.sides().get(0).uses().get(2);
    return used[0] <= programme.limits().get(0).most() + 1e-6
        && spent <= programme.limits().get(2).most() + 1e-6;
  }
}
