package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What the maker asks of a suggested price.
 *
 * @param marginPercent the profit wanted, in percent of what the buyer pays; 0 or more and under
 *     100, with at most four decimals. Each channel's fee and the margin together have to stay
 *     under 100 too, which is checked against the book
 * @param ending what a suggested price ends in, 0 or more and under 1, in the book's currency: 0
 *     gives whole units, 0.99 gives x.99, 0.50 gives x.50 only (never x.00). No more digits than
 *     the currency has, which is checked against the book
 */
public record PriceRequest(BigDecimal marginPercent, BigDecimal ending) {

  private static final BigDecimal MOST_PRICE = BigDecimal.valueOf(1_000_000_000);

  /**
   * Refuses a margin or an ending out of range.
   *
   * @throws Faulty with the paths {@code .marginPercent} and {@code .ending}
   */
  public PriceRequest {
    List<Fault> faults = new ArrayList<>();
    checkMargin(marginPercent, faults);
    checkEnding(ending, faults);
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** Notes a margin that no price can have. */
  static void checkMargin(BigDecimal margin, List<Fault> faults) {
    if (margin == null
        || margin.signum() < 0
        || margin.compareTo(Exact.HUNDRED) >= 0
        || digits(margin) > Exact.DECIMALS) {
      String right = "a margin from 0 to under 100 percent, with at most four decimals";
      faults.add(new Fault(".marginPercent", found(margin), right));
    }
  }

  private static void checkEnding(BigDecimal ending, List<Fault> faults) {
    if (ending == null || ending.signum() < 0 || ending.compareTo(BigDecimal.ONE) >= 0) {
      String right = "the part of a price behind its whole units, from 0 to under 1, such as 0.99";
      faults.add(new Fault(".ending", found(ending), right));
    }
  }

  /** Notes what is no price: it must be above 0 and no more than the book takes. */
  static void checkPrice(String path, BigDecimal price, List<Fault> faults) {
    if (price == null || price.signum() <= 0 || price.compareTo(MOST_PRICE) > 0) {
      faults.add(new Fault(path, found(price), "a price above 0 and at most 1000000000"));
    }
  }

  /** Decimals that matter: 0.50 has one. */
  static int digits(BigDecimal number) {
    return Math.max(0, number.stripTrailingZeros().scale());
  }

  /** The number in words; without an exponent when it is of ordinary length. */
  static String found(BigDecimal number) {
    if (number == null) {
      return "nothing";
    }
    return Math.abs((long) number.scale()) <= 20 ? number.toPlainString() : number.toString();
  }
}
