package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.Basis;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Water;

/** Density and yield against published mixes, by absolute volume. */
class AbsoluteVolumeTest {

  /** 1 lb/ft³ in kg/m³: 0.45359237 kg, 0.3048 m. */
  private static final double LB_PER_CUBIC_FOOT = 0.45359237 / Math.pow(0.3048, 3);

  private static final double ML_PER_CUBIC_FOOT = Math.pow(30.48, 3);
  private static final double GRAMS_PER_LB = 453.59237;

  // US Navy training course NAVEDTRA 14071, ch. 17, "Example Using Absolute Volume Method":
  // per cubic yard cement 610 lb (3.15), sand 1152 lb (2.65), coarse 1735 lb (2.60), water 305 lb
  // (water-cement ratio 0.50), air 5 %. Published tolerance of its rounded steps: 0.15 %.
  private static Recipe navy(double airPercent) {
    return concrete(
        List.of(new Part("cement", 610), new Part("sand", 1152), new Part("coarse", 1735)),
        50,
        airPercent,
        Mixes.filler("sand", 2.65),
        Mixes.filler("coarse", 2.60));
  }

  private static Recipe concrete(
      List<Part> dry, double waterPercentOfCement, double airPercent, Material... aggregate) {
    Mix mix = Mixes.plain(dry, new Water(waterPercentOfCement, Basis.CEMENT), airPercent);
    return Recipe.of(mix, Mixes.among(aggregate[0], aggregate[1], Mixes.cement()));
  }

  @Test
  void aCubicYardOfTheNavyCourseFillsTwentySevenCubicFeet() {
    double published = 3802.0 / 27 * LB_PER_CUBIC_FOOT;
    assertEquals(published, navy(5).wetDensityKgPerM3(), 0.0015 * published);
  }

  @Test
  void theSameMixInKilogramsFillsACubicMetre() {
    // Derived from the Navy course: 361.9 cement, 180.9 water, 1029.3 coarse, 684.6 sand per m³,
    // tolerance 0.3 %.
    Recipe si =
        concrete(
            List.of(new Part("cement", 361.9), new Part("sand", 684.6), new Part("coarse", 1029.3)),
            100 * 180.9 / 361.9,
            5,
            Mixes.filler("sand", 2.65),
            Mixes.filler("coarse", 2.60));
    double published = 361.9 + 180.9 + 1029.3 + 684.6;
    assertEquals(published, si.wetDensityKgPerM3(), 0.003 * published);
  }

  @Test
  void airIsWhatTheDensityWithoutItLoses() {
    // Derived from the Navy course: T = 2374.4 kg/m³ without air, and A = 100 (T − D)/T = 5.00 %
    // (formula of ASTM C138, second-hand).
    double airFree = navy(0).wetDensityKgPerM3();
    double withAir = navy(5).wetDensityKgPerM3();
    assertEquals(2374.4, airFree, 0.0015 * 2374.4);
    assertEquals(5.00, 100 * (airFree - withAir) / airFree, 1e-9);
  }

  @Test
  void theFirstExampleOfAci211FillsItsCubicYard() {
    // ACI 211.1-91, Example 1, value from memory: water 300, cement 484, coarse 1917 (2.68), sand
    // 1318 lb (2.64), air 1 %.
    Recipe aci =
        concrete(
            List.of(new Part("cement", 484), new Part("sand", 1318), new Part("coarse", 1917)),
            100 * 300.0 / 484,
            1,
            Mixes.filler("sand", 2.64),
            Mixes.filler("coarse", 2.68));
    double published = (300.0 + 484 + 1917 + 1318) / 27 * LB_PER_CUBIC_FOOT;
    assertEquals(published, aci.wetDensityKgPerM3(), 0.0015 * published);
  }

  @Test
  void theFirstExampleOfAci211FillsItsCubicMetre() {
    // ACI 211.1-91, Example 1 in SI, value from memory: 181 water, 292 cement, 1136 coarse, air
    // 0.01, sand 772 kg (771 in print).
    Recipe aci =
        concrete(
            List.of(new Part("cement", 292), new Part("sand", 772), new Part("coarse", 1136)),
            100 * 181.0 / 292,
            1,
            Mixes.filler("sand", 2.64),
            Mixes.filler("coarse", 2.68));
    assertEquals(181 + 292 + 1136 + 772, aci.wetDensityKgPerM3(), 1);
  }

  @Test
  void studioMortarHasTheDensityOfItsParts() {
    // Derived: 1 : 2 : 0.40 by mass, relative densities 3.15, 2.65 and 1.
    assertEquals(2309.5, mortar(0).wetDensityKgPerM3(), 0.05);
    assertEquals(2263.3, mortar(2).wetDensityKgPerM3(), 0.05);
  }

  @Test
  void studioMortarYieldsItsVolumePerKilogramOfCement() {
    // Derived: 1.47218 l per kg of cement without air, 1.50222 l with 2 %; 0.67927 kg cement per l.
    assertEquals(1.47218, 3.40 / mortar(0).wetDensityKgPerM3() * 1000, 5e-6);
    assertEquals(1.50222, 3.40 / mortar(2).wetDensityKgPerM3() * 1000, 5e-6);
    double cementShare = mortar(0).shares().get(0).fraction();
    assertEquals(0.67927, cementShare * mortar(0).wetDensityKgPerM3() / 1000, 5e-6);
  }

  private static Recipe mortar(double airPercent) {
    Mix mix =
        Mixes.plain(
            List.of(new Part("cement", 1), new Part("sand", 2)),
            new Water(40, Basis.CEMENT),
            airPercent);
    return Recipe.of(mix, Mixes.among(Mixes.cement(), Mixes.filler("sand", 2.65)));
  }

  // Field-technician study guide, "Yield, Relative Yield" (ASTM C138), second-hand: 564 + 1800 +
  // 1240 + 282 = 3886 lb at a measured 145.0 lb/ft³ yield 26.80 ft³, relative yield 0.993.
  private static Recipe studyGuide() {
    Mix mix =
        Mixes.mix(
            List.of(new Part("cement", 564), new Part("coarse", 1800), new Part("sand", 1240)),
            List.of(),
            new Water(100 * 282.0 / 564, Basis.CEMENT),
            0,
            OptionalDouble.of(145.0 * LB_PER_CUBIC_FOOT));
    return Recipe.of(
        mix, Mixes.among(Mixes.cement(), Mixes.filler("coarse", 2.65), Mixes.filler("sand", 2.65)));
  }

  @Test
  void aMouldOfThePublishedYieldTakesThePublishedBatch() {
    double wetGrams =
        CastingMass.wetGrams(
            Mixes.mould(OptionalDouble.of(26.80 * ML_PER_CUBIC_FOOT), 0), studyGuide());
    assertEquals(3886, wetGrams / GRAMS_PER_LB, 0.001 * 3886);
    assertEquals(0.993, 3886 / (wetGrams / GRAMS_PER_LB) * 26.80 / 27, 0.001);
  }

  @Test
  void cementContentIsItsShareOfTheMeasuredDensity() {
    // Derived from the study guide's example: 568.2 lb of cement per cubic yard.
    double cementShare = studyGuide().shares().get(0).fraction();
    double lbPerCubicFoot = studyGuide().wetDensityKgPerM3() / LB_PER_CUBIC_FOOT;
    assertEquals(568.2, cementShare * lbPerCubicFoot * 27, 0.05);
  }
}
