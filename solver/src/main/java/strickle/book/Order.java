package strickle.book;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;

/**
 * Something owed to a buyer.
 *
 * @param id 1 to 64 characters
 * @param buyer whom it is for ("for" in JSON), at most 200 characters, may be empty
 * @param kind the maker's own word for it, such as custom; at most 200 characters, may be empty
 * @param due local time by which it must be ready, in whole minutes
 * @param weight how much one late hour matters beside other orders', 0 to 1000000 with at most 6
 *     decimals
 * @param lines what is ordered, at least one line
 */
public record Order(
    String id, String buyer, String kind, LocalDateTime due, BigDecimal weight, List<Line> lines) {

  private static final BigDecimal HEAVIEST = BigDecimal.valueOf(1_000_000);
  private static final int WEIGHT_DECIMALS = 6;

  /**
   * Checks the order and copies its list.
   *
   * @throws Faulty with every fault, paths relative to the order
   */
  public Order {
    Check check = new Check();
    check.id(".id", id);
    check.remark(".for", buyer);
    check.remark(".kind", kind);
    check.moment(".due", due);
    check.amount(".weight", weight, HEAVIEST, WEIGHT_DECIMALS);
    lines = check.someOf(".lines", lines, "line");
    check.done();
  }
}
