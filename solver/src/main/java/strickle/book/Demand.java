package strickle.book;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How many of a piece may sell at a fair: a triangle of low, likely and high.
 *
 * @param piece id of the piece
 * @param low the fewest, 0 to 100000
 * @param likely the likeliest, from {@code low} to {@code high}
 * @param high the most, at most 100000
 * @param price the price asked at the fair, 0 or more, or empty for the piece's own
 */
public record Demand(String piece, int low, int likely, int high, Optional<BigDecimal> price) {

  /**
   * Checks the demand.
   *
   * @throws Faulty with every fault, paths relative to the demand
   */
  public Demand {
    Check check = new Check();
    check.id(".piece", piece);
    check.whole(".low", low, 0, Check.MOST_COUNT);
    check.whole(".likely", likely, 0, Check.MOST_COUNT);
    check.whole(".high", high, 0, Check.MOST_COUNT);
    check.that(low <= likely, ".likely", Integer.toString(likely), "no fewer than the low, " + low);
    check.that(
        likely <= high, ".high", Integer.toString(high), "no fewer than the likely, " + likely);
    check.amount(".price", price);
    check.done();
  }
}
