package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Basis;
import strickle.book.Dose;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;
import strickle.book.Water;
import strickle.mix.PigmentCheck.Verdict;

/**
 * Pigment against dry mix and cement. The limit, 10 % of the cement and of a blend in total, is
 * read from ASTM C979 §1.4; the table of bases is derived: p of cement = p of dry x (1 + A), or p
 * (1 + A)/(1 − p) when the dry mix holds the pigment.
 */
class PigmentCheckTest {

  private static PigmentCheck check(double sandPerCement, Dose... doses) {
    List<Part> dry = List.of(new Part("cement", 1), new Part("sand", sandPerCement));
    Mix mix =
        Mixes.mix(dry, List.of(doses), new Water(45, Basis.CEMENT), 0, OptionalDouble.of(2200));
    Material red = Mixes.filler("red", 4.5);
    Material black = Mixes.filler("black", 4.6);
    return PigmentCheck.of(
        mix, Mixes.among(Mixes.cement(), Mixes.filler("sand", 2.65), red, black));
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 6.666666667, 4.5, 7.5",
    "1, 5, 6, 10",
    "1.5, 4, 7.5, 12.5",
    "2, 3.333333333, 9, 15",
    "3, 2.5, 12, 20"
  })
  void bothBasesStandSideBySide(double sand, double ofDry, double three, double five) {
    PigmentCheck ten = check(sand, new Dose("red", 10, Basis.CEMENT));
    assertEquals(ofDry, ten.total().percentOfDry(), 1e-9);
    assertEquals(10, ten.total().percentOfCement().orElseThrow(), 1e-9);
    assertEquals(Verdict.WITHIN, ten.verdict());
    PigmentCheck low = check(sand, new Dose("red", 3, Basis.DRY));
    assertEquals(three, low.total().percentOfCement().orElseThrow(), 1e-9);
    assertEquals(three > 10 ? Verdict.TOO_MUCH : Verdict.WITHIN, low.verdict());
    PigmentCheck high = check(sand, new Dose("red", 5, Basis.DRY));
    assertEquals(five, high.total().percentOfCement().orElseThrow(), 1e-9);
    assertEquals(five > 10 ? Verdict.TOO_MUCH : Verdict.WITHIN, high.verdict());
  }

  @Test
  void aDryMixThatHoldsItsPigmentIsAnotherBasis() {
    PigmentCheck check = check(2, new Dose("red", 3, Basis.DRY));
    double p = check.total().percentOfDryAndPigment() / 100;
    assertEquals(100 * p * 3 / (1 - p), check.total().percentOfCement().orElseThrow(), 1e-9);
  }

  @Test
  void ofABlendTheTotalCounts() {
    Dose red = new Dose("red", 6, Basis.CEMENT);
    PigmentCheck alone = check(2, red);
    assertEquals(Verdict.WITHIN, alone.verdict());
    PigmentCheck blend = check(2, red, new Dose("black", 5, Basis.CEMENT));
    assertEquals(Verdict.TOO_MUCH, blend.verdict());
    assertEquals(11, blend.total().percentOfCement().orElseThrow(), 1e-9);
    assertEquals(2, blend.pigments().size());
    assertTrue(blend.pigments().stream().allMatch(one -> one.percentOfCement().orElseThrow() < 10));
  }

  // ASTM C979 §1.4, read: of mixed pigments the total must not exceed the maximum of any in it.
  @ParameterizedTest
  @CsvSource({
    "4, 2, 6, 9, 6, red, WITHIN",
    "4, 2.1, 6, 9, 6, red, TOO_MUCH",
    "4, 2.1, 9, 6, 6, black, TOO_MUCH",
    "4, 4, 9, 8, 8, black, WITHIN",
    "9, 1.1, 12, 12, 10, , TOO_MUCH",
    "9, 1, 12, 12, 10, , WITHIN",
    "9, 0, 9, 2, 9, red, WITHIN"
  })
  void ofABlendTheTotalKeepsToTheLeastMostOfAnyInIt(
      double red,
      double black,
      double mostRed,
      double mostBlack,
      double limit,
      String whose,
      Verdict verdict) {
    Mix mix =
        Mixes.mix(
            List.of(new Part("cement", 1)),
            List.of(new Dose("red", red, Basis.CEMENT), new Dose("black", black, Basis.CEMENT)),
            new Water(45, Basis.CEMENT),
            0,
            OptionalDouble.of(2200));
    PigmentCheck check =
        PigmentCheck.of(
            mix,
            Mixes.among(
                Mixes.cement(), Mixes.pigment("red", mostRed), Mixes.pigment("black", mostBlack)));
    assertEquals(
        new PigmentCheck.Limit(limit, Optional.ofNullable(whose), List.of()), check.limit());
    assertEquals(verdict, check.verdict());
  }

  @Test
  void aPigmentWithoutAMostOfItsOwnIsNamed() {
    PigmentCheck check = check(2, new Dose("red", 6, Basis.CEMENT));
    assertEquals(new PigmentCheck.Limit(10, Optional.empty(), List.of("red")), check.limit());
  }

  @Test
  void aMixWithoutPigmentNeedsNoCheck() {
    assertEquals(Verdict.NONE, check(2).verdict());
    assertEquals(Verdict.NONE, check(2, new Dose("red", 0, Basis.DRY)).verdict());
  }

  @Test
  void withUnknownCementItCannotBeChecked() {
    Material bag = Mixes.material("bag", "binder", OptionalDouble.of(2.8), Mixes.NONE);
    Mix mix =
        Mixes.mix(
            List.of(new Part("bag", 1)),
            List.of(new Dose("red", 30, Basis.DRY)),
            new Water(20, Basis.DRY),
            0,
            Mixes.NONE);
    PigmentCheck check = PigmentCheck.of(mix, Mixes.among(bag, Mixes.filler("red", 4.5)));
    assertEquals(Verdict.CANNOT_BE_CHECKED, check.verdict());
    assertEquals(30, check.total().percentOfDry(), 1e-9);
    assertEquals(OptionalDouble.empty(), check.total().percentOfCement());
  }
}
