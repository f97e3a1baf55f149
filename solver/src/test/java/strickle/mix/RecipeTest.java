package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.SampleBook;
import strickle.book.Water;

class RecipeTest {

  private static final Water QUARTER = new Water(25, Basis.DRY_AND_PIGMENT);

  @Test
  void dryMixTakesItsPigmentAndWater() {
    // Common practice, no source: water 25 % of mix plus pigment, pigment 3 % of the mix, whole
    // grams rounded down.
    assertDryMixTakes(2500, 75, 643);
    assertDryMixTakes(2000, 60, 515);
    assertDryMixTakes(1500, 45, 386);
  }

  private static void assertDryMixTakes(double dry, double pigment, double water) {
    List<Portion> portions = Mixes.binderAndPigment(3, QUARTER).forDry(dry);
    assertEquals(dry, Mixes.grams(portions, "white-blend"), 1e-9);
    assertEquals(pigment, Math.floor(Mixes.grams(portions, "iron-black") + 1e-9));
    assertEquals(water, Math.floor(Mixes.grams(portions, "water") + 1e-9));
  }

  @Test
  void materialsStandInTheOrderDryPigmentWaterAndAddUpToOne() {
    List<Share> shares = Mixes.slate().shares();
    assertEquals(
        List.of("white-blend", "iron-black", "water"),
        shares.stream().map(Share::material).toList());
    // 100 parts, 3 of pigment, 25 % of 103 of water (the example book).
    assertEquals(100 / 128.75, shares.get(0).fraction(), 1e-12);
    assertEquals(3 / 128.75, shares.get(1).fraction(), 1e-12);
    assertEquals(25.75 / 128.75, shares.get(2).fraction(), 1e-12);
  }

  @Test
  void waterIsAPercentageOfItsBasis() {
    assertEquals(25, waterPer100Dry(new Water(25, Basis.DRY)), 1e-9);
    assertEquals(25.75, waterPer100Dry(new Water(25, Basis.DRY_AND_PIGMENT)), 1e-9);
    // The binder of the example book is 45 % cement.
    assertEquals(18, waterPer100Dry(new Water(40, Basis.CEMENT)), 1e-9);
  }

  private static double waterPer100Dry(Water water) {
    return Mixes.grams(Mixes.binderAndPigment(3, water).forDry(100), "water");
  }

  @Test
  void pigmentOfCementIsScaledByTheCementInTheDryMix() {
    // Derived table "10 % of cement = % of dry mix", sand : cement 0.5, 1, 1.5, 2, 3.
    assertEquals(6.67, pigmentPercentOfDry(0.5), 0.005);
    assertEquals(5.00, pigmentPercentOfDry(1), 1e-9);
    assertEquals(4.00, pigmentPercentOfDry(1.5), 1e-9);
    assertEquals(3.33, pigmentPercentOfDry(2), 0.005);
    assertEquals(2.50, pigmentPercentOfDry(3), 1e-9);
  }

  private static double pigmentPercentOfDry(double sandPerCement) {
    Recipe recipe = pigmented(sandPerCement, new Dose("iron-black", 10, Basis.CEMENT));
    assertEquals(10, recipe.pigmentPercentOfCement().orElseThrow(), 1e-9);
    return Mixes.grams(recipe.forDry(100), "iron-black");
  }

  @Test
  void pigmentOfDryIsMoreOfTheCementTheMoreSandThereIs() {
    // Derived table "3 % and 5 % of dry mix = % of cement": p of cement = p of dry x (1 + A).
    double[] sandPerCement = {0.5, 1, 1.5, 2, 3};
    double[] threePercent = {4.5, 6.0, 7.5, 9.0, 12.0};
    double[] fivePercent = {7.5, 10.0, 12.5, 15.0, 20.0};
    for (int i = 0; i < sandPerCement.length; i++) {
      assertEquals(threePercent[i], pigmentPercentOfCement(sandPerCement[i], 3), 1e-9);
      assertEquals(fivePercent[i], pigmentPercentOfCement(sandPerCement[i], 5), 1e-9);
    }
  }

  private static double pigmentPercentOfCement(double sandPerCement, double percentOfDry) {
    return pigmented(sandPerCement, new Dose("iron-black", percentOfDry, Basis.DRY))
        .pigmentPercentOfCement()
        .orElseThrow();
  }

  private static Recipe pigmented(double sandPerCement, Dose dose) {
    Mix mix =
        Mixes.mix(
            List.of(new Part("cement", 1), new Part("sand", sandPerCement)),
            List.of(dose),
            new Water(45, Basis.CEMENT),
            0,
            Mixes.NONE);
    return Recipe.of(
        mix, Mixes.among(Mixes.cement(), Mixes.filler("sand", 2.65), SampleBook.ironBlack()));
  }

  @Test
  void pigmentOfCementIsUnknownWhenTheCementOfAMaterialIs() {
    Material blend = Mixes.material("blend", "binder", OptionalDouble.of(2.9), Mixes.NONE);
    Mix mix = Mixes.plain(List.of(new Part("blend", 1)), new Water(25, Basis.DRY), 0);
    assertTrue(Recipe.of(mix, Mixes.among(blend)).pigmentPercentOfCement().isEmpty());
  }

  @Test
  void wetMassIsTheDryMassAndWhatGoesWithIt() {
    Recipe recipe = Mixes.slate();
    assertEquals(recipe.forDry(1000), recipe.forWet(1287.5));
  }

  @Test
  void measuredDensityOverridesComputed() {
    Mix computed = SampleBook.slate();
    Mix measured =
        Mixes.mix(
            computed.dry(),
            computed.pigment(),
            computed.water(),
            computed.airPercent(),
            OptionalDouble.of(1987.5));
    Recipe recipe =
        Recipe.of(measured, Mixes.among(SampleBook.whiteBlend(), SampleBook.ironBlack()));
    assertEquals(1987.5, recipe.wetDensityKgPerM3());
    assertEquals(Mixes.slate().shares(), recipe.shares());
  }

  @Test
  void measuredDensityNeedsNoRelativeDensities() {
    Material blend = Mixes.material("blend", "binder", Mixes.NONE, Mixes.NONE);
    Mix mix =
        Mixes.mix(
            List.of(new Part("blend", 1)),
            List.of(),
            new Water(25, Basis.DRY),
            0,
            OptionalDouble.of(2100));
    assertEquals(2100, Recipe.of(mix, Mixes.among(blend)).wetDensityKgPerM3());
  }

  @Test
  void everythingMissingIsToldAtOnceAndWhere() {
    Material blend = Mixes.material("blend", "binder", Mixes.NONE, Mixes.NONE);
    Mix mix =
        Mixes.mix(
            List.of(new Part("blend", 1)),
            List.of(new Dose("red", 3, Basis.CEMENT)),
            new Water(25, Basis.CEMENT),
            0,
            Mixes.NONE);
    assertEquals(
        List.of(".dry[0].material", ".pigment[0].of", ".pigment[0].material", ".water.of"),
        faultyPaths(mix, blend));
  }

  @Test
  void cementOfAnUnknownMaterialIsNotASecondFault() {
    Mix mix = Mixes.plain(List.of(new Part("cemnet", 1)), new Water(25, Basis.CEMENT), 0);
    assertEquals(List.of(".dry[0].material"), faultyPaths(mix, Mixes.cement()));
  }

  @Test
  void aPercentageOfCementNeedsCement() {
    Mix mix = Mixes.plain(List.of(new Part("sand", 1)), new Water(25, Basis.CEMENT), 0);
    assertEquals(List.of(".water.of"), faultyPaths(mix, Mixes.filler("sand", 2.65)));
  }

  private static List<String> faultyPaths(Mix mix, Material... materials) {
    Faulty faulty = assertThrows(Faulty.class, () -> Recipe.of(mix, Mixes.among(materials)));
    return faulty.faults().stream().map(Fault::path).toList();
  }

  @Test
  void gramsThatCannotBeAreRefused() {
    Recipe recipe = Mixes.slate();
    for (double grams : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY, 1e13}) {
      assertThrows(IllegalArgumentException.class, () -> recipe.forDry(grams));
      assertThrows(IllegalArgumentException.class, () -> recipe.forWet(grams));
      assertThrows(IllegalArgumentException.class, () -> recipe.weighOut(grams));
    }
  }
}
