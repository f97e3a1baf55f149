package strickle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LiftTest {

  private static final double KG_PER_POUND = 0.45359237;
  private static final double CM_PER_INCH = 2.54;

  @Test
  void theMostIsThatOfThePublishedEquation() {
    // NIOSH, read at ccohs.org/oshanswers/ergonomics/niosh/calculating_rwl.html: 23 kg.
    assertEquals(23, new Lift(25, 75, 25, 0, 1, 1).limitKg(), 1e-12);
    assertEquals(51 * KG_PER_POUND, Lift.MOST_KG, 0.15);
  }

  @Test
  void theOriginOfTheManualsExampleIsAsPrinted() {
    // DHHS (NIOSH) 94-110, example 4, second-hand: 1.0 x .94 x .87 x 1.0 x .88 x .95, 34.9 lb. The
    // heights are those that give the printed multipliers; 10 in and 25 cm stand for each other,
    // and
    // pounds and kilograms differ by 1 %.
    Lift lift = new Lift(25, 22 * CM_PER_INCH, 36 * CM_PER_INCH, 0, .88, .95);
    assertEquals(1.0, lift.reachFactor());
    assertEquals(.94, lift.heightFactor(), 0.005);
    assertEquals(.87, lift.travelFactor(), 0.005);
    assertEquals(1.0, lift.twistFactor());
    assertEquals(34.9, 51 * 1.0 * .94 * .87 * 1.0 * .88 * .95, 0.05);
    assertEquals(34.9 * KG_PER_POUND, lift.limitKg(), 34.9 * KG_PER_POUND * 0.015);
  }

  @Test
  void theDestinationOfTheManualsExampleIsAsPrinted() {
    // Same example: 15.2 lb, with HM .50 (inferred) and VM .78, and a better grip up there.
    Lift lift = new Lift(50, 59 * CM_PER_INCH, 36 * CM_PER_INCH, 0, .88, 1);
    assertEquals(.50, lift.reachFactor(), 0.01);
    assertEquals(.78, lift.heightFactor(), 0.005);
    assertEquals(15.2 * KG_PER_POUND, lift.limitKg(), 15.2 * KG_PER_POUND * 0.015);
  }

  @Test
  void theIndexOfTheManualsFirstExampleIsAsPrinted() {
    // DHHS (NIOSH) 94-110, example 1: 44 lb with limits of 16.3 and 14.5 lb, indices 2.7 and 3.0;
    // value from memory.
    assertEquals(2.7, indexOf(44, 16.3), 0.05);
    assertEquals(3.0, indexOf(44, 14.5), 0.05);
  }

  /** The index of a load whose limit is brought about by how often it is lifted. */
  private static double indexOf(double pounds, double limitPounds) {
    Lift lift = new Lift(25, 75, 25, 0, limitPounds * KG_PER_POUND / Lift.MOST_KG, 1);
    return lift.index(pounds * KG_PER_POUND);
  }

  @Test
  void theMultipliersAreThoseOfThePublishedEquationAtTheirEnds() {
    // Second-hand from the same manual: HM 25/H, VM 1 - .003|V - 75|, DM .82 + 4.5/D, AM 1 -
    // .0032A.
    Lift near = new Lift(10, 0, 10, 135, 1, 1);
    assertEquals(1, near.reachFactor());
    assertEquals(.775, near.heightFactor(), 1e-12);
    assertEquals(1, near.travelFactor(), 1e-12);
    assertEquals(.568, near.twistFactor(), 1e-12);
    Lift far = new Lift(63, 175, 175, 0, 1, 1);
    assertEquals(25.0 / 63, far.reachFactor(), 1e-12);
    assertEquals(.7, far.heightFactor(), 1e-12);
    assertEquals(.82 + 4.5 / 175, far.travelFactor(), 1e-12);
  }

  @Test
  void whatIsTooFarOrTooHighMayNotBeLiftedAtAll() {
    assertEquals(0, new Lift(63.1, 75, 25, 0, 1, 1).limitKg());
    assertEquals(0, new Lift(25, 175.1, 25, 0, 1, 1).limitKg());
    assertEquals(0, new Lift(25, 75, 25, 136, 1, 1).limitKg());
    assertEquals(Double.POSITIVE_INFINITY, new Lift(63.1, 75, 25, 0, 1, 1).index(5));
  }

  @Test
  void theLimitFromTheFloorIsTheProductOfItsMultipliers() {
    // Computed: 23 x 25/40 x .775 x .88 x .9.
    assertEquals(23 * .625 * .775 * .88 * .9, Lift.fromTheFloor().limitKg(), 1e-9);
    assertEquals(1, Lift.fromTheFloor().index(Lift.fromTheFloor().limitKg()), 1e-12);
  }

  @Test
  void farTwistedAndOftenIsNeverMore() {
    Random random = new Random(13);
    for (int i = 0; i < 500; i++) {
      double reach = 70 * random.nextDouble();
      double height = 175 * random.nextDouble();
      double travel = 175 * random.nextDouble();
      double twist = 135 * random.nextDouble();
      double limit = new Lift(reach, height, travel, twist, .9, .9).limitKg();
      assertTrue(0 <= limit && limit <= Lift.MOST_KG);
      assertTrue(limit >= new Lift(reach + 5, height, travel, twist, .9, .9).limitKg());
      assertTrue(limit >= new Lift(reach, height, travel, twist + 5, .9, .9).limitKg());
      assertTrue(limit >= new Lift(reach, height, travel, twist, .8, .9).limitKg());
    }
  }

  @Test
  void whatIsNoLiftIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Lift(-1, 75, 25, 0, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Lift(25, 75, 25, 0, 1.1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Lift(25, Double.NaN, 25, 0, 1, 1));
  }
}
