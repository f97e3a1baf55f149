package strickle.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * The prices file of format strickle-prices/1: what every piece costs and what to ask. The currency
 * stands once for all amounts in it.
 *
 * @param currency of every amount
 * @param basis where the minutes come from
 * @param pieces in the order of the book
 * @param plan what all of the plan costs; empty when the prices are by typical runs
 * @param bundle what several pieces together bring; empty when none is asked about
 * @param fair a fair's table; empty when none is asked about
 */
public record Prices(
    CurrencyUnit currency,
    PriceBasis basis,
    List<PiecePrices> pieces,
    Optional<PlanCost> plan,
    Optional<BundlePrices> bundle,
    Optional<FairTable> fair) {

  /** Refuses a missing part. */
  public Prices {
    Objects.requireNonNull(currency, "currency");
    Objects.requireNonNull(basis, "basis");
    pieces = List.copyOf(pieces);
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(bundle, "bundle");
    Objects.requireNonNull(fair, "fair");
  }

  /** Prices that rest on no plan. */
  public Prices(CurrencyUnit currency, PriceBasis basis, List<PiecePrices> pieces) {
    this(currency, basis, pieces, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The same with a bundle. */
  public Prices with(BundlePrices other) {
    return new Prices(currency, basis, pieces, plan, Optional.of(other), fair);
  }

  /** The same with a fair's table. */
  public Prices with(FairTable other) {
    return new Prices(currency, basis, pieces, plan, bundle, Optional.of(other));
  }

  /**
   * An amount of these prices as money, with all its decimals: going to the currency's own digits
   * takes a rounding that the caller names.
   *
   * @param amount any amount found in these prices
   */
  public BigMoney money(BigDecimal amount) {
    return BigMoney.of(currency, amount);
  }
}
