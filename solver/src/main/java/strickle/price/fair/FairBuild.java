package strickle.price.fair;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import strickle.book.Order;

/**
 * What to bring to a fair. A plan has it ready before the opening and makes no other order later.
 *
 * @param fair the fair's id
 * @param currency the book's
 * @param from the first moment that was planned
 * @param orderingFrom from when on what is short in stock is ordered; nothing that uses it begins
 *     before it can be there
 * @param opens when the fair opens, local time
 * @param ready when the last piece for it is ready
 * @param tableCost what the table costs
 * @param budget money there is for packs, if it matters
 * @param packs what the packs cost that the build needs bought; empty without a budget
 * @param pieces what to bring of each
 * @param profit what is earned on average, the table paid
 * @param profitAtMost no build that can be ready earns more, as far as the limits tell
 * @param worths what a little more would earn
 * @param tightened where a plan was late and the build was made smaller, in that order
 * @param orders the build as orders of the book, to be added to it
 * @param hoursLate weighted late hours of the plan; no more than without the fair
 */
public record FairBuild(
    String fair,
    CurrencyUnit currency,
    OffsetDateTime from,
    OffsetDateTime orderingFrom,
    LocalDateTime opens,
    Optional<OffsetDateTime> ready,
    BigDecimal tableCost,
    Optional<BigDecimal> budget,
    Optional<BigDecimal> packs,
    List<FairPiece> pieces,
    BigDecimal profit,
    BigDecimal profitAtMost,
    List<Worth> worths,
    List<Tightened> tightened,
    List<Order> orders,
    BigDecimal hoursLate) {

  /** Copies the lists. */
  public FairBuild {
    pieces = List.copyOf(pieces);
    worths = List.copyOf(worths);
    tightened = List.copyOf(tightened);
    orders = List.copyOf(orders);
  }
}
