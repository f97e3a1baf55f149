package strickle.plan;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * What no plan of a book can beat, whatever order things are done in.
 *
 * @param from the first moment that may be planned
 * @param orders a bound for each order, in the order of the book
 * @param weightedLateHours the least Σ weight x started late hours
 * @param attendedMinutes the least minutes of all tasks together
 */
public record Bounds(
    OffsetDateTime from,
    List<OrderBound> orders,
    BigDecimal weightedLateHours,
    long attendedMinutes) {

  /**
   * The bounds of one order.
   *
   * @param order the order's id
   * @param alone before this it cannot be ready, even if it were the book's only order, with all
   *     that is on hand its own
   * @param served before this it cannot be ready as the book's orders are served: the castings of
   *     those served before it, from the same moulds, have to be there as well
   */
  public record OrderBound(String order, OffsetDateTime alone, OffsetDateTime served) {}

  /** Takes its own copy of the list. */
  public Bounds {
    orders = List.copyOf(orders);
  }
}
