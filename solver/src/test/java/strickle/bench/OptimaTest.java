package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static strickle.bench.Refusals.assertRefused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strickle.book.Faulty;

class OptimaTest {

  private static final String TEXT = "problem,optimum\none.sch,12\ntwo.sch,3..5\nsix.sch,unsat\n";

  private static Optima read(String text) {
    return Optima.read(Lines.of("optimum.csv", text));
  }

  @Test
  void anOptimumIsANumberOrBetweenTwoOrThereIsNoSchedule() {
    assertEquals(new Optima.Optimum(12, 12), read(TEXT).of("one.sch"));
    assertEquals(new Optima.Optimum(3, 5), read(TEXT).of("two.sch"));
    assertEquals(new Optima.Optimum(Result.NONE, Result.NONE), read(TEXT).of("six.sch"));
  }

  @Test
  void aNameMayBeInSmallLettersOrLarge() {
    assertEquals(new Optima.Optimum(12, 12), read(TEXT).of("ONE.SCH"));
  }

  @Test
  void aProblemThatIsNotInTheTableIsNamed() {
    Faulty missing = assertThrows(Faulty.class, () -> read(TEXT).of("ten.sch"));
    assertEquals(
        "optimum.csv: found nothing about ten.sch; right would be a row for it",
        missing.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "optimum; | best; | line 1: found \"problem,best\"; right would be problem,optimum",
        "one.sch,12 | one.sch,12,3 | line 2: found \"one.sch,12,3\"; right would be a problem",
        "12 | 0 | line 2: found \"0\"; right would be a number from 1",
        "12 | none | line 2: found \"none\"; right would be a whole number",
        "3..5 | 6..5 | line 3: found \"6..5\"; right would be a number from 1, or a smaller",
        "3..5 | 3.. | line 3: found \"\"; right would be a whole number",
        "six | ONE | line 4: found \"ONE.sch\"; right would be each problem once",
      })
  void aTableThatCannotBeReadIsRefused(String right, String wrong, String message) {
    assertRefused(message, TEXT, right, wrong, OptimaTest::read);
  }
}
