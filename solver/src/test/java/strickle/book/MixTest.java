package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MixTest {

  private static final Mix SLATE = SampleBook.slate();

  @ParameterizedTest
  @ValueSource(strings = {"", "4a4f55", "#4a4f5", "#4a4f555", "#4a4g55", "slate", "#4a4f55\n"})
  void aSwatchIsAHashAndSixHexadecimalDigits(String swatch) {
    assertEquals(
        new Fault(".swatch", Show.text(swatch), "a colour like #4a4f55, or none"),
        Faults.only(() -> Altered.of(SLATE, "swatch", Optional.of(swatch))));
  }

  @Test
  void aSwatchMayBeInCapitalsOrMissing() {
    assertEquals(
        Optional.of("#4A4F55"), Altered.of(SLATE, "swatch", Optional.of("#4A4F55")).swatch());
    assertEquals(Optional.empty(), Altered.of(SLATE, "swatch", Optional.empty()).swatch());
  }

  @Test
  void aMixHasAtLeastOneDryMaterial() {
    assertEquals(
        new Fault(".dry", "an empty list", "at least one dry material"),
        Faults.only(() -> Altered.of(SLATE, "dry", List.of())));
  }

  @Test
  void aMaterialStandsInARecipeOnce() {
    Part white = new Part("white-blend", 50);
    Dose black = new Dose("iron-black", 1, Basis.DRY);

    assertEquals(
        ".dry[1].material",
        Faults.only(() -> Altered.of(SLATE, "dry", List.of(white, white))).path());
    assertEquals(
        ".pigment[1].material",
        Faults.only(() -> Altered.of(SLATE, "pigment", List.of(black, black))).path());
    assertEquals(
        ".pigment[0].material",
        Faults.only(
                () -> Altered.of(SLATE, "pigment", List.of(new Dose("white-blend", 1, Basis.DRY))))
            .path());
  }

  @Test
  void pigmentIsNeverAPercentageOfDryAndPigment() {
    assertEquals(
        new Fault(".of", "dry+pigment", "dry, cement, water or total"),
        Faults.only(() -> new Dose("iron-black", 3, Basis.DRY_AND_PIGMENT)));
    assertEquals(Basis.CEMENT, new Dose("iron-black", 3, Basis.CEMENT).of());
  }

  @ParameterizedTest
  @ValueSource(strings = {"DRY", "CEMENT", "DRY_AND_PIGMENT", "TOTAL"})
  void waterIsAPercentageOfAnyBasis(String basis) {
    assertEquals(Basis.valueOf(basis), new Water(25, Basis.valueOf(basis)).of());
  }

  @Test
  void aMixCountsCementWhenWaterOrAPigmentDoes() {
    Dose ofCement = new Dose("iron-black", 3, Basis.CEMENT);

    assertFalse(SLATE.countsCement());
    assertTrue(Altered.of(SLATE, "water", new Water(40, Basis.CEMENT)).countsCement());
    assertTrue(Altered.of(SLATE, "pigment", List.of(ofCement)).countsCement());
  }

  @ParameterizedTest
  @CsvSource({
    "100, TOTAL, 0, DRY",
    "60, TOTAL, 40, TOTAL",
    "60, TOTAL, 90, WATER",
    "150, DRY_AND_PIGMENT, 70, WATER",
    "25, DRY, 100, TOTAL"
  })
  void percentagesThatLeaveNothingDryAreRefused(double water, Basis of, double dose, Basis basis) {
    List<Dose> black = List.of(new Dose("iron-black", dose, basis));
    Water wet = new Water(water, of);
    Fault fault = Faults.only(() -> with(SLATE, black, wet));
    assertEquals(".water.percent", fault.path());
  }

  @Test
  void percentagesThatJustLeaveSomethingDryAreAMix() {
    List<Dose> black = List.of(new Dose("iron-black", 39, Basis.TOTAL));
    assertEquals(black, with(SLATE, black, new Water(60, Basis.TOTAL)).pigment());
  }

  private static Mix with(Mix mix, List<Dose> pigment, Water water) {
    return new Mix(
        mix.id(),
        mix.name(),
        mix.swatch(),
        mix.dry(),
        pigment,
        water,
        mix.airPercent(),
        mix.wetDensityKgPerM3(),
        mix.mixMinutes(),
        mix.workingMinutes(),
        mix.washMinutes());
  }
}
