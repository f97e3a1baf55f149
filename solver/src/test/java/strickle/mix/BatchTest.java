package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import strickle.book.Basis;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.SampleBook;
import strickle.book.Water;

class BatchTest {

  private static final double ML_PER_CUBIC_FOOT = 28316.846592;
  private static final double GRAMS_PER_LB = 453.59237;

  /** Rounding steps of the course: 0.15 %. */
  private static final double NAVY = 0.0015;

  private static BatchLine line(Batch batch, String material) {
    return batch.lines().stream()
        .filter(line -> line.material().equals(material))
        .findFirst()
        .orElseThrow();
  }

  // US Navy training course NAVEDTRA 14071, ch. 17, "Example Using Absolute Volume Method", read:
  // a cubic yard of cement 610 (3.15), coarse 1735 (2.60), sand 1152 (2.65), water 305 lb, air 5 %.
  private static Batch navy() {
    Mix mix =
        Mixes.plain(
            List.of(new Part("cement", 610), new Part("sand", 1152), new Part("coarse", 1735)),
            new Water(50, Basis.CEMENT),
            5);
    var materials =
        Mixes.among(Mixes.cement(), Mixes.filler("sand", 2.65), Mixes.filler("coarse", 2.60));
    double density = Recipe.of(mix, materials).wetDensityKgPerM3();
    double grams = 27 * ML_PER_CUBIC_FOOT / 1000 * density;
    return Batch.of(mix, materials, grams, Weighing.USUAL);
  }

  @Test
  void theNavyCourseFillsItsPublishedVolumes() {
    Batch batch = navy();
    Map<String, Double> cubicFeet =
        Map.of("cement", 3.10, "water", 4.89, "coarse", 10.69, "sand", 6.97);
    cubicFeet.forEach(
        (material, published) ->
            assertEquals(
                published,
                line(batch, material).volumeMl().orElseThrow() / ML_PER_CUBIC_FOOT,
                NAVY * published + 0.005,
                material));
    assertEquals(5.00, batch.airPercent().orElseThrow(), 1e-9);
    assertEquals(1.35, 0.05 * batch.wetMl() / ML_PER_CUBIC_FOOT, 0.005);
  }

  @Test
  void theNavyCourseWeighsItsPublishedPounds() {
    Map<String, Double> pounds =
        Map.of("cement", 610.0, "water", 305.0, "coarse", 1735.0, "sand", 1152.0);
    pounds.forEach(
        (material, published) ->
            assertEquals(
                published, line(navy(), material).grams() / GRAMS_PER_LB, NAVY * published));
    // Derived: 3802 lb, and 2374.4 kg/m³ without air.
    assertEquals(3802, navy().wetGrams() / GRAMS_PER_LB, NAVY * 3802);
    assertEquals(2374.4, navy().airFreeKgPerM3().orElseThrow(), NAVY * 2374.4);
  }

  @Test
  void percentagesAreOfDryCementWaterAndTotal() {
    Batch batch = navy();
    BatchLine water = line(batch, "water");
    assertEquals(50, water.percentOfCement().orElseThrow(), 1e-9);
    assertEquals(100, water.percentOfWater().orElseThrow(), 1e-9);
    // Of what is weighed: more than a tonne to a tenth of a gram.
    assertEquals(100 * 305.0 / 3497, water.percentOfDry(), 1e-5);
    assertEquals(100 * 305.0 / 3802, water.percentOfTotal(), 1e-5);
    assertEquals(200, line(batch, "cement").percentOfWater().orElseThrow(), 1e-5);
  }

  @Test
  void percentagesAreOfWhatIsWeighed() {
    Batch batch = Batch.of(SampleBook.slate(), Mixes.bookMaterials(), 2494.3, new Weighing(25, 0));
    double dry = line(batch, "white-blend").grams();
    double pigment = line(batch, "iron-black").grams();
    assertNotEquals(line(batch, "iron-black").exactGrams(), pigment, 1);
    assertEquals(100 * pigment / dry, line(batch, "iron-black").percentOfDry(), 1e-9);
    assertEquals(
        100 * pigment / (0.45 * dry),
        line(batch, "iron-black").percentOfCement().orElseThrow(),
        1e-9);
    assertEquals(
        100 * pigment / batch.wetGrams(), line(batch, "iron-black").percentOfTotal(), 1e-9);
  }

  @Test
  void spareStepsGoToWhatIsLargeAndNotToThePigment() {
    // 96.4 g of pigment are 19.28 steps of 5 g: 95 are 1.5 % less, 100 would be 3.7 % more.
    double grams = 2494.3 * 96.4 / 58.1;
    Batch batch = Batch.of(SampleBook.slate(), Mixes.bookMaterials(), grams, new Weighing(5, 0));
    assertEquals(95, line(batch, "iron-black").grams());
    assertTrue(batch.wetGrams() >= grams);
  }

  @Test
  void toATenthOfAGramABatchIsWeighedAsAPlanWeighsIt() {
    Random random = new Random(7);
    for (int i = 0; i < 50; i++) {
      double grams = 100 + random.nextDouble() * 9000;
      Batch batch = Batch.of(SampleBook.slate(), Mixes.bookMaterials(), grams, Weighing.USUAL);
      assertEquals(
          Recipe.of(SampleBook.slate(), Mixes.bookMaterials()).weighOut(grams),
          batch.lines().stream().map(l -> new Portion(l.material(), l.grams())).toList());
      assertEquals(Math.round(grams * 10) / 10.0, batch.wetGrams(), 1e-9);
    }
  }

  @Test
  void aMeasuredDensityTellsYieldCementAndAir() {
    // Field-technician study guide (ASTM C138), second-hand: 3886 lb at 145.0 lb/ft³ are 26.80 ft³;
    // derived: 568.2 lb of cement in a cubic yard.
    Mix mix =
        Mixes.mix(
            List.of(new Part("cement", 564), new Part("coarse", 1800), new Part("sand", 1240)),
            List.of(),
            new Water(50, Basis.CEMENT),
            0,
            OptionalDouble.of(145 * 453592.37 / 28316.846592));
    var materials =
        Mixes.among(Mixes.cement(), Mixes.filler("coarse", 2.65), Mixes.filler("sand", 2.65));
    Batch batch = Batch.of(mix, materials, 3886 * GRAMS_PER_LB, Weighing.USUAL);
    assertEquals(26.80, batch.wetMl() / ML_PER_CUBIC_FOOT, 0.001);
    assertEquals(0.993, batch.wetMl() / ML_PER_CUBIC_FOOT / 27, 0.001);
    double lbPerCubicYard =
        batch.cementKgPerM3().orElseThrow() * 27 * ML_PER_CUBIC_FOOT / 1000 / GRAMS_PER_LB;
    assertEquals(568.2, lbPerCubicYard, 0.05);
    double free = batch.airFreeKgPerM3().orElseThrow();
    assertEquals(
        100 * (free - batch.wetDensityKgPerM3()) / free, batch.airPercent().orElseThrow(), 1e-9);
  }

  @Test
  void studioMortarHasItsCementInALitre() {
    // Derived: 1 : 2 : 0.40, no air: 0.67927 kg of cement in a litre.
    Mix mix =
        Mixes.plain(
            List.of(new Part("cement", 1), new Part("sand", 2)), new Water(40, Basis.CEMENT), 0);
    Batch batch =
        Batch.of(
            mix, Mixes.among(Mixes.cement(), Mixes.filler("sand", 2.65)), 2309.5, Weighing.USUAL);
    assertEquals(679.27, batch.cementKgPerM3().orElseThrow(), 0.005);
    assertEquals(0, batch.airPercent().orElseThrow(), 1e-9);
  }

  @Test
  void massInIsMassOutInWholeSteps() {
    Random random = new Random(5);
    for (double step : new double[] {0.01, 0.5, 1, 5}) {
      for (int i = 0; i < 50; i++) {
        double grams = 100 + random.nextDouble() * 20_000;
        Batch batch =
            Batch.of(SampleBook.slate(), Mixes.bookMaterials(), grams, new Weighing(step, 0));
        double sum = batch.lines().stream().mapToDouble(BatchLine::grams).sum();
        assertEquals(batch.wetGrams(), sum, 1e-9);
        assertTrue(grams - 1e-9 <= sum && sum < grams + step, grams + " in steps of " + step);
        for (BatchLine line : batch.lines()) {
          assertEquals(0, Math.abs(Math.IEEEremainder(line.grams(), step)), 1e-6);
          assertTrue(Math.abs(line.errorGrams()) < step);
          assertEquals(line.grams() - line.exactGrams(), line.errorGrams(), 1e-12);
          assertEquals(100 * line.errorGrams() / line.exactGrams(), line.errorPercent(), 1e-9);
        }
      }
    }
  }

  @Test
  void aCoarseStepNeverMakesTheWholeTooSmall() {
    // Rounded to the nearest step, 2494.3 g would be 2400 g: a mould that is not full.
    Batch batch = Batch.of(SampleBook.slate(), Mixes.bookMaterials(), 2494.3, new Weighing(60, 0));
    assertEquals(2520, batch.wetGrams(), 1e-9);
    assertEquals(25.7, batch.leftoverGrams(), 1e-9);
    assertEquals(60, line(batch, "iron-black").grams(), 1e-9);
  }

  @Test
  void aStepThatWeighsNothingOfAMaterialIsRefusedWithOneThatWould() {
    Faulty faulty =
        assertThrows(
            Faulty.class,
            () ->
                Batch.of(SampleBook.slate(), Mixes.bookMaterials(), 2494.3, new Weighing(500, 0)));
    assertEquals(
        List.of(
            new Fault(
                ".stepGrams",
                "500 g, which weighs none of the 58.1 g of iron-black",
                "at most 58.1 g, or more mixed at once")),
        faulty.faults());
    Batch.of(SampleBook.slate(), Mixes.bookMaterials(), 2494.3, new Weighing(58.1, 0));
  }

  @Test
  void aBatchIsRoundedUpAndTheRestIsLeftOver() {
    Batch batch = Batch.of(SampleBook.slate(), Mixes.bookMaterials(), 2494.3, new Weighing(1, 500));
    assertEquals(2500, batch.wetGrams(), 1e-9);
    assertEquals(5.7, batch.leftoverGrams(), 1e-9);
    Batch whole = Batch.of(SampleBook.slate(), Mixes.bookMaterials(), 2500, new Weighing(1, 500));
    assertEquals(2500, whole.wetGrams(), 1e-9);
    assertEquals(0, whole.leftoverGrams(), 1e-9);
  }

  @Test
  void aScaleNobodyHasIsRefused() {
    Faulty faulty = assertThrows(Faulty.class, () -> new Weighing(0, -1));
    assertEquals(
        List.of(".stepGrams", ".roundUpGrams"), faulty.faults().stream().map(Fault::path).toList());
    assertThrows(IllegalArgumentException.class, () -> Mixes.slate().weighOut(100, 0));
  }

  @Test
  void theScarcestMaterialSaysHowManyCastings() {
    List<Portion> each =
        List.of(new Portion("blend", 1900), new Portion("black", 60), new Portion("water", 500));
    assertEquals(
        Optional.of(new Enough(6, "black")),
        Enough.of(Map.of("blend", 14_000.0, "black", 400.0, "water", 1.0), each));
    assertEquals(Optional.of(new Enough(2, "blend")), Enough.of(Map.of("blend", 3800.0), each));
    assertEquals(Optional.empty(), Enough.of(Map.of("water", 1.0), each));
  }

  @Test
  void aLeftoverGoesWhereLeastIsLeftOfIt() {
    List<Leftover.Free> moulds =
        List.of(
            new Leftover.Free("cup", 150, 4),
            new Leftover.Free("dish", 400, 2),
            new Leftover.Free("planter", 2500, 1),
            new Leftover.Free("taken", 100, 0));
    assertEquals(
        List.of(new Leftover.Taker("dish", 2, 100), new Leftover.Taker("cup", 4, 300)),
        Leftover.takers(900, moulds));
  }

  @Test
  void aPastBatchGivesItsMixAndDensity() {
    PastBatch past =
        new PastBatch(
            List.of(new Portion("cement", 1000), new Portion("sand", 2000)),
            List.of(new Portion("red", 50)),
            400,
            1450,
            105);
    assertEquals(3450, past.grams(), 1e-9);
    assertEquals((3450 - 105) / 1.45, past.densityKgPerM3(), 1e-9);
    Recipe recipe =
        Recipe.of(
            past.mix(),
            Mixes.among(Mixes.cement(), Mixes.filler("sand", 2.65), Mixes.filler("red", 4.5)));
    // Made again, it weighs what it weighed.
    List<Portion> again = recipe.forWet(past.grams());
    assertEquals(1000, Mixes.grams(again, "cement"), 1e-9);
    assertEquals(50, Mixes.grams(again, "red"), 1e-9);
    assertEquals(400, Mixes.grams(again, "water"), 1e-9);
  }

  @Test
  void aPastBatchThatCannotHaveBeenIsRefused() {
    List<Portion> dry = List.of(new Portion("cement", 1000));
    for (double[] filledAndLeft : new double[][] {{0, 0}, {500, 1400}, {50, 0}, {9000, 0}}) {
      assertThrows(
          Faulty.class,
          () -> new PastBatch(dry, List.of(), 400, filledAndLeft[0], filledAndLeft[1]));
    }
    assertThrows(Faulty.class, () -> new PastBatch(List.of(), List.of(), 400, 500, 0));
  }
}
