package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What is asked of a sensitivity.
 *
 * @param piece the piece's id; empty for all that is ordered
 * @param channel id of the channel it is sold through
 * @param price a list price in place of the piece's own, above 0; only with a piece
 * @param byPercent by how much every number is made smaller and larger, above 0 and at most 50
 * @param most how many numbers are told, 1 to 1000
 */
public record SensitivityRequest(
    Optional<String> piece,
    String channel,
    Optional<BigDecimal> price,
    BigDecimal byPercent,
    int most) {

  private static final BigDecimal MOST_BY = BigDecimal.valueOf(50);

  private static final int MOST = 1000;

  /**
   * Refuses what is out of range.
   *
   * @throws Faulty with the paths {@code .price}, {@code .byPercent} and {@code .most}
   */
  public SensitivityRequest {
    List<Fault> faults = new ArrayList<>();
    price.ifPresent(one -> PriceRequest.checkPrice(".price", one, faults));
    if (price.isPresent() && piece.isEmpty()) {
      faults.add(new Fault(".price", "a price without a piece", "a piece, or no price"));
    }
    if (byPercent.signum() <= 0
        || byPercent.compareTo(MOST_BY) > 0
        || PriceRequest.digits(byPercent) > Exact.DECIMALS) {
      String found = PriceRequest.found(byPercent);
      faults.add(new Fault(".byPercent", found, "above 0 and at most 50 percent"));
    }
    if (most < 1 || most > MOST) {
      faults.add(new Fault(".most", Integer.toString(most), "1 to " + MOST));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }
}
