package strickle.plan.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static strickle.plan.SamplePlan.at;
import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.rulesBroken;
import static strickle.plan.audit.Reading.sample;

import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rules 8 and 10 of a plan with a cover. Three pieces are owed beyond the stock and each turns out
 * with 0.92: three castings bring them in 0.92³ = 77.87 of 100 cases, four in 96.56.
 */
class SureTest {

  private static PlanDraft covered(double percent) {
    return sample().with("coverPercent", OptionalDouble.of(percent));
  }

  @Test
  void castingsThatAreSureEnoughAndNoMoreAreRight() {
    assertValid(BOOK, covered(90));
    assertValid(BOOK, covered(96.5));
    assertValid(BOOK, covered(78));
  }

  @Test
  void tooFewCastingsForTheCoverAreFound() {
    // The order is never that sure either.
    assertEquals(Set.of(8, 10), rulesBroken(BOOK, covered(96.6).plan()));
  }

  @Test
  void moreCastingsThanTheCoverTakesAreFound() {
    PlanDraft third = covered(77).order("ready", at("04-18T10:09"));
    assertBreaks(10, "piece planter-slate", BOOK, third);
  }

  @Test
  void anOrderIsReadyWithTheRunThatMakesItSureEnough() {
    assertBreaks(8, "order O-104", BOOK, covered(90).order("ready", at("04-18T10:09")));
    assertEquals(Set.of(8, 10), rulesBroken(BOOK, covered(77).plan()));
  }

  /** "Table A1. Binomial distribution", scribd.com/document/413754319, P(X ≤ x) of n = 5 to 7. */
  @ParameterizedTest
  @CsvSource({
    "5, 0.50, 2, 0.5000",
    "5, 0.25, 2, 0.8965",
    "6, 0.20, 1, 0.6554",
    "6, 0.45, 3, 0.7447",
    "7, 0.10, 1, 0.8503",
    "7, 0.40, 3, 0.7102",
  })
  void chancesAreThoseOfThePrintedTable(int pieces, double good, int most, double printed) {
    assertEquals(printed, Sure.tooFew(pieces, good, most + 1), 0.00005001);
  }

  @Test
  void chancesAreThoseOfEveryWayItCanTurnOut() {
    for (int pieces = 1; pieces <= 14; pieces++) {
      for (int wanted = 0; wanted <= pieces + 1; wanted++) {
        double few = 0;
        for (int way = 0; way < 1 << pieces; way++) {
          int good = Integer.bitCount(way);
          few += good < wanted ? Math.pow(0.83, good) * Math.pow(0.17, pieces - good) : 0;
        }
        assertEquals(few, Sure.tooFew(pieces, 0.83, wanted), 1e-12, pieces + ", " + wanted);
      }
    }
  }

  @Test
  void largeCountsAreCountedToo() {
    // Less than half of an odd number, by symmetry.
    assertEquals(0.5, Sure.tooFew(19_999, 0.5, 10_000), 1e-10);
    assertEquals(0, Sure.tooFew(20_000, 1, 20_000));
    assertEquals(1, Sure.tooFew(20_000, 1, 20_001));
  }
}
