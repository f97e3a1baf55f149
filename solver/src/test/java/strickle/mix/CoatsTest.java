package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CoatsTest {

  private static final double MICRONS_PER_MIL = 25.4;
  private static final double M2_PER_SQUARE_FOOT = 0.3048 * 0.3048;
  private static final double LITRES_PER_GALLON = 3.785411784;

  @Test
  void theSpreadingRateIsThatOfThePublishedSheet() {
    // Spreading rate sheet (scribd.com/document/343849341): 65 % at 125 µm is 5.2 m²/l.
    assertEquals(5.2, new Film(65, 125).m2PerLitre(), 1e-12);
  }

  @Test
  void theSpreadingRateInFeetAndGallonsIsThatOfTheSheet() {
    // Same sheet: 65 % at 5 mil is 208.5 ft²/gal, by 1604 ft²/gal at 1 mil.
    double m2PerLitre = new Film(65, 5 * MICRONS_PER_MIL).m2PerLitre();
    assertEquals(208.5, m2PerLitre / M2_PER_SQUARE_FOOT * LITRES_PER_GALLON, 0.1);
    double atOneMil = new Film(100, MICRONS_PER_MIL).m2PerLitre();
    assertEquals(1604, atOneMil / M2_PER_SQUARE_FOOT * LITRES_PER_GALLON, 0.5);
  }

  @Test
  void theWetFilmIsThatOfThePublishedSheet() {
    // Volume solids and spreading rate (scribd.com/document/476982351): 71 % at 125 µm, 176 µm.
    Film film = new Film(71, 125);
    assertEquals(176, film.wetMicrons(), 0.5);
    // 5.68 m²/l computed from the same formula.
    assertEquals(5.68, film.m2PerLitre(), 1e-9);
  }

  @Test
  void litresGrowWithAreaCoatsAndLoss() {
    // Computed from the sheet's formula: 1.2 m², 2 coats of 25 µm, 40 %, 30 % lost.
    assertEquals(0.2143, new Film(40, 25).litres(1.2, 2, 30), 5e-5);
  }

  @Test
  void whatStaysOfTheProductIsTheFilm() {
    Random random = new Random(17);
    for (int i = 0; i < 500; i++) {
      double solids = 1 + 99 * random.nextDouble();
      double microns = 1 + 500 * random.nextDouble();
      double m2 = 10 * random.nextDouble();
      Film film = new Film(solids, microns);
      // A litre is 10⁹ mm³, a µm on a m² is 1000 mm³.
      double dryLitres = film.litres(m2, 3, 0) * solids / 100;
      assertEquals(3 * m2 * microns / 1000, dryLitres, 1e-9);
    }
  }

  @Test
  void absorbentConcreteTakesWhatWasMeasuredOnAPiece() {
    // Arithmetic: 4.5 g on 0.06 m² is 75 g/m²; 0.5 m² twice with a tenth lost is 83.3 g.
    Uptake uptake = Uptake.measured(1000, 1004.5, 0.06);
    assertEquals(75, uptake.gramsPerM2(), 1e-9);
    assertEquals(75 / 0.9, uptake.grams(0.5, 2, 10), 1e-9);
  }

  @Test
  void aBookOfLeafCoversWhatItsSheetsMeasure() {
    // Books of 25, 3 1/4 in. square (cool.conservation-us.org/don/dt/dt1585.html).
    Leaf leaf = new Leaf(3.25 * 25.4, 3.25 * 25.4, 0);
    assertEquals(68.145, leaf.sheetM2() * 1e4, 5e-4);
    assertEquals(0.17036, 25 * leaf.sheetM2(), 5e-6);
    assertEquals(25, leaf.sheets(25 * leaf.sheetM2(), 0));
  }

  @Test
  void overlapAndWasteCostSheets() {
    // Computed: 0.05 m², leaf of 80 mm, 5 mm overlap, 10 % waste. Common practice, no source.
    Leaf leaf = new Leaf(80, 80, 5);
    assertEquals(10, leaf.sheets(0.05, 10));
    assertEquals(12.1, leaf.overlapPercent(), 0.05);
    assertEquals(0, leaf.sheets(0, 10));
  }

  @Test
  void sheetsAlwaysCoverAndNeverByAWholeSheetTooMuch() {
    Random random = new Random(19);
    for (int i = 0; i < 500; i++) {
      Leaf leaf = new Leaf(50 + 50 * random.nextDouble(), 80, 10 * random.nextDouble());
      double m2 = random.nextDouble();
      double covered = leaf.sheets(m2, 0) * leaf.coversM2();
      assertEquals(0, Math.max(0, m2 - covered), 1e-8);
      assertEquals(0, Math.max(0, covered - m2 - leaf.coversM2()), 1e-8);
    }
  }

  @Test
  void whatNoCoatIsIsRefused() {
    List<Executable> wrong =
        List.of(
            () -> new Film(0, 25),
            () -> new Film(101, 25),
            () -> new Film(40, 0),
            () -> new Film(40, Double.NaN),
            () -> new Film(40, 25).litres(-1, 1, 0),
            () -> new Film(40, 25).litres(1, 0, 0),
            () -> new Film(40, 25).litres(1, 1, 100),
            () -> Uptake.measured(100, 100, 1),
            () -> Uptake.measured(100, 101, 0),
            () -> new Uptake(0),
            () -> new Uptake(1).grams(1, 1, 100),
            () -> new Leaf(80, 80, 80),
            () -> new Leaf(80, 80, -1),
            () -> new Leaf(80, 80, 5).sheets(-1, 0));
    wrong.forEach(one -> assertThrows(IllegalArgumentException.class, one));
  }
}
