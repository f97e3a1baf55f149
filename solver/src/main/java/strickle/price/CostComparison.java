package strickle.price;

import java.math.BigDecimal;
import java.util.List;

/**
 * What a good piece costs by its typical run and as planned, side by side. Amounts are in the
 * book's currency to four decimals. Every column adds up: both costs to their full cost, the
 * differences and the reasons to the difference of the two; so a single difference may be one unit
 * of the last decimal off the two amounts it stands beside.
 *
 * @param standardMinutes attended minutes for one good piece by the typical run
 * @param standardFull its full cost by the typical run
 * @param difference the full cost as planned, less that
 * @param lines the lines of both, in the same order
 * @param reasons where the difference comes from
 */
public record CostComparison(
    BigDecimal standardMinutes,
    BigDecimal standardFull,
    BigDecimal difference,
    List<LineComparison> lines,
    List<Reason> reasons) {

  /**
   * One line of the cost.
   *
   * @param what the name of a material or a form; "labour" and "overhead" for those two
   * @param kind the kind of cost
   * @param standard by the typical run
   * @param planned as planned
   * @param difference as planned, less by the typical run
   */
  public record LineComparison(
      String what, CostKind kind, BigDecimal standard, BigDecimal planned, BigDecimal difference) {}

  /**
   * One reason for the difference.
   *
   * @param what what the minutes are spent on
   * @param minutes more of them for one good piece than by the typical run; below 0 for fewer
   * @param amount what that costs, wage and overhead together
   * @param why in words
   */
  public record Reason(MinuteKind what, BigDecimal minutes, BigDecimal amount, String why) {}

  /** Freezes the lists. */
  public CostComparison {
    lines = List.copyOf(lines);
    reasons = List.copyOf(reasons);
  }
}
