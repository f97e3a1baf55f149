package strickle.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Whether a piece holds a margin at a price, and what would make it. Amounts are of one good piece,
 * to four decimals, in the book's currency.
 *
 * @param currency of every amount
 * @param basis where the minutes come from
 * @param piece the piece's id
 * @param channel the channel's id
 * @param price the list price asked about
 * @param wantedPercent the margin wanted, in percent of what the buyer pays
 * @param holds whether the margin is reached
 * @param minutes attended minutes
 * @param full full cost
 * @param net what is left of the price after discount and fees
 * @param profit net less full cost
 * @param marginPercent profit in percent of what the buyer pays
 * @param mostCost the full cost at which the margin just holds; below 0 when none is low enough
 * @param gap that less the full cost; below 0 is what is missing
 * @param largest the three largest cost lines
 * @param levers every lever alone
 * @param table run size by minutes
 * @param reference the comparison with what is bought elsewhere
 */
public record Target(
    CurrencyUnit currency,
    PriceBasis basis,
    String piece,
    String channel,
    BigDecimal price,
    BigDecimal wantedPercent,
    boolean holds,
    BigDecimal minutes,
    BigDecimal full,
    BigDecimal net,
    BigDecimal profit,
    BigDecimal marginPercent,
    BigDecimal mostCost,
    BigDecimal gap,
    List<LargeLine> largest,
    List<Lever> levers,
    LeverTable table,
    Optional<ReferencePrice> reference) {

  /**
   * A cost line with its share of the full cost.
   *
   * @param what the name of a material or a form; "labour" and "overhead" for those two
   * @param kind the kind of cost
   * @param amount of a good piece
   * @param sharePercent of the full cost
   */
  public record LargeLine(String what, CostKind kind, BigDecimal amount, BigDecimal sharePercent) {}

  /** Freezes the lists. */
  public Target {
    largest = List.copyOf(largest);
    levers = List.copyOf(levers);
  }
}
