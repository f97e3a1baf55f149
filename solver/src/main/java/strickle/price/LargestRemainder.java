package strickle.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounding several amounts so that they still add up: by largest remainder (Hamilton's method of
 * apportionment). Every amount is cut to so many decimals, then the units of the last decimal that
 * are missing from the rounded total go to the amounts that lost most by the cut, the earlier one
 * first among equals.
 */
public final class LargestRemainder {

  private LargestRemainder() {}

  /**
   * The amounts to four decimals; their sum is exactly the sum of the amounts given, rounded as at
   * the door, and each is less than one unit of the fourth decimal away from the amount given.
   *
   * @param amounts unrounded
   */
  static List<BigDecimal> round(List<BigDecimal> amounts) {
    return round(amounts, Exact.DECIMALS);
  }

  /**
   * The amounts to so many decimals; their sum is exactly the sum of the amounts given, rounded
   * (halves away from zero), and each is less than one unit of the last decimal away from the
   * amount given.
   *
   * @param amounts unrounded
   * @param decimals 0 or more, such as the digits of a currency
   */
  public static List<BigDecimal> round(List<BigDecimal> amounts, int decimals) {
    return share(sum(amounts).setScale(decimals, RoundingMode.HALF_UP), amounts);
  }

  /**
   * A whole shared out by amounts that nearly add up to it; what they miss it by beyond the
   * rounding is spread evenly.
   *
   * @param whole in the decimals that the shares are to have
   * @param amounts unrounded, at least one unless the whole is 0
   * @return shares that add up to the whole exactly
   * @throws IllegalArgumentException when there is something to share and nothing to share it out
   *     to
   */
  public static List<BigDecimal> share(BigDecimal whole, List<BigDecimal> amounts) {
    int decimals = whole.scale();
    List<BigDecimal> shares =
        new ArrayList<>(amounts.stream().map(amount -> cut(amount, decimals)).toList());
    int units = whole.subtract(sum(shares)).movePointRight(decimals).intValueExact();
    if (amounts.isEmpty()) {
      if (units != 0) {
        throw new IllegalArgumentException(whole + " has nothing to be shared out to");
      }
      return List.of();
    }
    BigDecimal each = units(Math.floorDiv(units, amounts.size()), decimals);
    shares.replaceAll(each::add);
    IntStream.range(0, amounts.size())
        .boxed()
        .sorted(Comparator.comparing((Integer i) -> lost(amounts.get(i), decimals)).reversed())
        .limit(Math.floorMod(units, amounts.size()))
        .forEach(i -> shares.set(i, shares.get(i).add(units(1, decimals))));
    return List.copyOf(shares);
  }

  private static BigDecimal units(int number, int decimals) {
    return BigDecimal.valueOf(number).movePointLeft(decimals);
  }

  private static BigDecimal cut(BigDecimal amount, int decimals) {
    return amount.setScale(decimals, RoundingMode.FLOOR);
  }

  private static BigDecimal lost(BigDecimal amount, int decimals) {
    return amount.subtract(cut(amount, decimals));
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
