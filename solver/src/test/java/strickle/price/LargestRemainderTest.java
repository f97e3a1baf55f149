package strickle.price;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LargestRemainderTest {

  private static List<BigDecimal> amounts(String... amounts) {
    return Stream.of(amounts).map(BigDecimal::new).toList();
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  @Test
  void theMissingUnitGoesToTheAmountThatLostMost() {
    // The sum 3.00018 becomes 3.0002; cut, the three give 3.0000.
    assertEquals(
        amounts("1.0000", "1.0001", "1.0001"),
        LargestRemainder.round(amounts("1.00004", "1.00005", "1.00009")));
  }

  @Test
  void amongEqualsTheEarlierOneGetsTheUnit() {
    assertEquals(
        amounts("0.3334", "0.3333", "0.3333"),
        LargestRemainder.round(amounts("0.33333334", "0.33333334", "0.33333334")));
  }

  @Test
  void whatNeedsNoRoundingStaysAsItIs() {
    assertEquals(
        amounts("0.0000", "2.5000", "0.1234"),
        LargestRemainder.round(amounts("0", "2.5", "0.1234")));
  }

  @Test
  void nothingAddsUpToNothing() {
    assertEquals(List.of(), LargestRemainder.round(List.of()));
  }

  @Test
  void everySumIsTheRoundedTotalAndNoAmountMovesByAUnit() {
    Random random = new Random(20270405);
    for (int round = 0; round < 2000; round++) {
      List<BigDecimal> exact =
          random.doubles(1 + random.nextInt(12), 0, 50).mapToObj(BigDecimal::valueOf).toList();
      List<BigDecimal> rounded = LargestRemainder.round(exact);

      assertEquals(sum(exact).setScale(4, RoundingMode.HALF_UP), sum(rounded));
      for (int i = 0; i < exact.size(); i++) {
        BigDecimal moved = rounded.get(i).subtract(exact.get(i)).abs();
        assertTrue(moved.compareTo(new BigDecimal("0.0001")) < 0, "moved by " + moved);
      }
    }
  }
}
