package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import strickle.book.SampleBook;

/** The example lot of formats.md and the rounding of a weigh-out. */
class WeighOutTest {

  @Test
  void theExampleLotWeighsWhatTheFormatPageSays() {
    // formats.md, lot L1: one planter of the example book.
    double wetGrams = CastingMass.wetGrams(SampleBook.planterDeep(), Mixes.slate());
    assertEquals(2494.3, wetGrams, 0.05);
    assertEquals(
        List.of(
            new Portion("white-blend", 1937.3),
            new Portion("iron-black", 58.1),
            new Portion("water", 498.9)),
        Mixes.slate().weighOut(wetGrams));
  }

  @Test
  void castingMassGrowsWithVolumeAndWaste() {
    // A litre weighs the density; two litres with 10 % waste weigh 2.2 times that.
    Recipe slate = Mixes.slate();
    double litre = CastingMass.wetGrams(Mixes.mould(OptionalDouble.of(1000), 0), slate);
    double wasteful = CastingMass.wetGrams(Mixes.mould(OptionalDouble.of(2000), 10), slate);
    assertEquals(slate.wetDensityKgPerM3(), litre, 1e-9);
    assertEquals(2.2, wasteful / litre, 1e-12);
  }

  @Test
  void tenthsLeftOverGoToTheLargestRemainders() {
    // 2.5 + 4.2 + 3.3: the floors leave one, and 0.5 lost most.
    assertArrayEquals(
        new long[] {3, 4, 3}, LargestRemainder.split(10, new double[] {0.25, 0.42, 0.33}));
    // 3.75 + 3.75 + 2.5: the floors leave two.
    assertArrayEquals(
        new long[] {4, 4, 2}, LargestRemainder.split(10, new double[] {0.375, 0.375, 0.25}));
  }

  @Test
  void stepsAddUpToTheLeastThatIsNotBelowTheWhole() {
    // 2.5 + 4.2 + 3.4 are 10.1: the floors leave two for 11; one more is relatively least
    // for 2.5, then for 3.4.
    assertArrayEquals(new long[] {3, 4, 4}, LargestRemainder.atLeast(new double[] {2.5, 4.2, 3.4}));
    assertArrayEquals(new long[] {2, 3}, LargestRemainder.atLeast(new double[] {2, 3}));
    // Binary fractions of 10 tenths may be a hair above 1: no step more for that.
    assertArrayEquals(
        new long[] {0, 1}, LargestRemainder.atLeast(new double[] {1e-12, 1.0000000000001}));
  }

  @Test
  void ofEqualRemaindersTheEarlierPartWins() {
    assertArrayEquals(new long[] {1, 0}, LargestRemainder.split(1, new double[] {0.5, 0.5}));
  }

  @Test
  void nothingIsWeighedOutFromNothing() {
    assertEquals(0, Mixes.sum(Mixes.slate().weighOut(0)));
    assertTrue(Mixes.slate().weighOut(0).stream().allMatch(portion -> portion.grams() == 0));
  }
}
