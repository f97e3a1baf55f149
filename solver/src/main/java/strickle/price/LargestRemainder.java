package strickle.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounding several amounts so that they still add up: by largest remainder (Hamilton's method of
 * apportionment). Every amount is cut to four decimals, then the units of the fourth decimal that
 * are missing from the rounded total go to the amounts that lost most by the cut, the earlier one
 * first among equals.
 */
final class LargestRemainder {

  private static final BigDecimal UNIT = BigDecimal.ONE.movePointLeft(Exact.DECIMALS);

  private LargestRemainder() {}

  /**
   * The amounts to four decimals; their sum is exactly the sum of the amounts given, rounded as at
   * the door, and each is less than one unit of the fourth decimal away from the amount given.
   *
   * @param amounts unrounded
   */
  static List<BigDecimal> round(List<BigDecimal> amounts) {
    List<BigDecimal> rounded =
        new ArrayList<>(amounts.stream().map(LargestRemainder::cut).toList());
    BigDecimal missing = Exact.atTheDoor(sum(amounts)).subtract(sum(rounded));
    int units = missing.movePointRight(Exact.DECIMALS).intValueExact();
    IntStream.range(0, amounts.size())
        .boxed()
        .sorted(Comparator.comparing((Integer i) -> lost(amounts.get(i))).reversed())
        .limit(units)
        .forEach(i -> rounded.set(i, rounded.get(i).add(UNIT)));
    return List.copyOf(rounded);
  }

  private static BigDecimal cut(BigDecimal amount) {
    return amount.setScale(Exact.DECIMALS, RoundingMode.FLOOR);
  }

  private static BigDecimal lost(BigDecimal amount) {
    return amount.subtract(cut(amount));
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
