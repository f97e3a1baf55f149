package strickle.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Which numbers move the profit most: each made smaller and larger by as many percent, all else as
 * it is. Amounts are in the book's currency, to four decimals.
 *
 * @param currency of every amount
 * @param basis where the minutes come from
 * @param piece the piece's id; empty when it is of all that is ordered
 * @param channel id of the channel it is sold through
 * @param byPercent how much smaller and larger
 * @param sold how many pieces the profit is of
 * @param profit of all of them
 * @param numbers those that move it most, the strongest first
 */
public record Sensitivity(
    CurrencyUnit currency,
    PriceBasis basis,
    Optional<String> piece,
    String channel,
    BigDecimal byPercent,
    long sold,
    BigDecimal profit,
    List<MovingNumber> numbers) {

  /**
   * One number.
   *
   * @param what it is
   * @param piece id of the piece it is of; empty when it is the studio's, a channel's, a material's
   *     or a form's
   * @param unit what it is measured in
   * @param present its value
   * @param low a smaller value
   * @param high a larger value, no more than it can be
   * @param profitAtLow the profit with the smaller value
   * @param profitAtHigh the profit with the larger value
   * @param swing the larger of the two changes of the profit, 0 or more
   */
  public record MovingNumber(
      String what,
      Optional<String> piece,
      String unit,
      BigDecimal present,
      BigDecimal low,
      BigDecimal high,
      BigDecimal profitAtLow,
      BigDecimal profitAtHigh,
      BigDecimal swing) {}

  /** Freezes the list. */
  public Sensitivity {
    numbers = List.copyOf(numbers);
  }
}
