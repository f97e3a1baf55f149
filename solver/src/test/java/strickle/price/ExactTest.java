package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactTest {

  @ParameterizedTest
  @CsvSource({
    "1.00005,1.0001",
    "1.00015,1.0002",
    "1.000049999,1.0000",
    "-1.00005,-1.0001",
    "3,3.0000"
  })
  void anAmountLeavesWithFourDecimalsHalvesAwayFromZero(String exact, String atTheDoor) {
    assertEquals(new BigDecimal(atTheDoor), Exact.atTheDoor(new BigDecimal(exact)));
  }

  @ParameterizedTest
  @CsvSource({"1,8,0.125", "6,0.92,6.521739130434782608695652173913043"})
  void aQuotientIsExactOrHas34Digits(String dividend, String divisor, String quotient) {
    assertEquals(
        new BigDecimal(quotient), Exact.divide(new BigDecimal(dividend), new BigDecimal(divisor)));
  }

  @ParameterizedTest
  @CsvSource({"92,0.92", "0.1,0.001", "100,1"})
  void aPercentageFromTheBookIsTheDecimalThatWasWritten(double percent, String fraction) {
    assertEquals(0, new BigDecimal(fraction).compareTo(Exact.fraction(percent)));
  }
}
