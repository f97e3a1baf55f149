package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What is asked of a target check.
 *
 * @param piece the piece's id
 * @param channel the channel's id
 * @param price the list price, above 0 and at most a thousand million
 * @param marginPercent the profit wanted, in percent of what the buyer pays; 0 to under 100, with
 *     at most four decimals
 * @param referencePrice what a bought piece costs, above 0; may be empty
 */
public record TargetRequest(
    String piece,
    String channel,
    BigDecimal price,
    BigDecimal marginPercent,
    Optional<BigDecimal> referencePrice) {

  /**
   * Refuses amounts and a margin out of range.
   *
   * @throws Faulty with the paths {@code .price}, {@code .marginPercent} and {@code
   *     .referencePrice}
   */
  public TargetRequest {
    List<Fault> faults = new ArrayList<>();
    PriceRequest.checkPrice(".price", price, faults);
    PriceRequest.checkMargin(marginPercent, faults);
    referencePrice.ifPresent(other -> PriceRequest.checkPrice(".referencePrice", other, faults));
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }
}
