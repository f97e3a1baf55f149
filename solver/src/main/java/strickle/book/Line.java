package strickle.book;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One line of an order.
 *
 * @param piece id of the piece
 * @param quantity pieces ordered, 1 to 100000
 * @param price what was agreed for each, 0 or more, or empty for the piece's own price
 */
public record Line(String piece, int quantity, Optional<BigDecimal> price) {

  /**
   * Checks the line.
   *
   * @throws Faulty with every fault, paths relative to the line
   */
  public Line {
    Check check = new Check();
    check.id(".piece", piece);
    check.whole(".quantity", quantity, 1, Check.MOST_COUNT);
    check.amount(".price", price);
    check.done();
  }
}
