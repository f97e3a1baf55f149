package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Water;

/** Percentages of the water and of the whole, held against the batch they make. */
class MassesTest {

  private static final Material PIGMENT = Mixes.filler("pigment", 4.6);
  private static final Material LIQUID = Mixes.filler("liquid", 1.1);

  private static Mix mix(Water water, Dose... doses) {
    List<Part> dry = List.of(new Part("cement", 1), new Part("sand", 2));
    return Mixes.mix(dry, List.of(doses), water, 0, Mixes.NONE);
  }

  private static List<Portion> of(Mix mix, double wetGrams) {
    return Recipe.of(mix, Mixes.among(Mixes.cement(), Mixes.filler("sand", 2.65), PIGMENT, LIQUID))
        .forWet(wetGrams);
  }

  @Test
  void waterOfTotalIsThatMuchOfTheWhole() {
    List<Portion> portions = of(mix(new Water(15, Basis.TOTAL)), 2000);
    assertEquals(300, Mixes.grams(portions, "water"), 1e-9);
    assertEquals(1700 / 3.0, Mixes.grams(portions, "cement"), 1e-9);
  }

  @Test
  void pigmentOfWaterIsThatMuchOfTheWater() {
    Mix mix = mix(new Water(40, Basis.CEMENT), new Dose("liquid", 2, Basis.WATER));
    List<Portion> portions = of(mix, 1000);
    assertEquals(0.02, Mixes.grams(portions, "liquid") / Mixes.grams(portions, "water"), 1e-12);
    assertEquals(0.4, Mixes.grams(portions, "water") / Mixes.grams(portions, "cement"), 1e-12);
  }

  @Test
  void everyPercentageHoldsInTheBatchWhateverItIsOf() {
    Random random = new Random(77);
    Basis[] ofPigment = {Basis.DRY, Basis.CEMENT, Basis.WATER, Basis.TOTAL};
    Basis[] ofWater = {Basis.DRY, Basis.CEMENT, Basis.DRY_AND_PIGMENT, Basis.TOTAL};
    for (int i = 0; i < 300; i++) {
      Dose one = new Dose("pigment", random.nextDouble() * 10, ofPigment[random.nextInt(4)]);
      Dose two = new Dose("liquid", random.nextDouble() * 10, ofPigment[random.nextInt(4)]);
      Water water = new Water(5 + random.nextDouble() * 40, ofWater[random.nextInt(4)]);
      List<Portion> portions = of(mix(water, one, two), 5000);
      assertEquals(5000, Mixes.sum(portions), 1e-8);
      check(portions, "pigment", one.percent(), one.of());
      check(portions, "liquid", two.percent(), two.of());
      check(portions, "water", water.percent(), water.of());
    }
  }

  private static void check(List<Portion> portions, String material, double percent, Basis of) {
    double cement = Mixes.grams(portions, "cement");
    double dry = cement + Mixes.grams(portions, "sand");
    double pigment = Mixes.grams(portions, "pigment") + Mixes.grams(portions, "liquid");
    double base =
        switch (of) {
          case DRY -> dry;
          case CEMENT -> cement;
          case DRY_AND_PIGMENT -> dry + pigment;
          case WATER -> Mixes.grams(portions, "water");
          case TOTAL -> Mixes.sum(portions);
        };
    assertEquals(percent / 100 * base, Mixes.grams(portions, material), 1e-8, of.toString());
  }
}
