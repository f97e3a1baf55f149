package strickle.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What the maker asks of a suggested price.
 *
 * @param marginPercent the profit wanted, in percent of what the buyer pays; 0 or more and under
 *     100, with at most four decimals. Each channel's fee and the margin together have to stay
 *     under 100 too, which is checked against the book
 * @param ending what a suggested price ends in, 0 or more and under {@code every}, in the book's
 *     currency: with 1, 0 gives whole units, 0.99 gives x.99, 0.50 gives x.50 only (never x.00). No
 *     more digits than the currency has, which is checked against the book
 * @param every how far suggested prices lie apart, above 0 and at most 1,000,000: 1, or 10 for
 *     prices that end in 9, or 100 for yen that end in 80
 * @param markupPercent the profit wanted, in percent of the full cost, 0 to 100,000; may be empty
 * @param hourly what the maker wants to earn by the hour, 0 or more; may be empty
 * @param discountPercent what a buyer gets off the list price, above 0 and under 100; may be empty
 */
public record PriceRequest(
    BigDecimal marginPercent,
    BigDecimal ending,
    BigDecimal every,
    Optional<BigDecimal> markupPercent,
    Optional<BigDecimal> hourly,
    Optional<BigDecimal> discountPercent) {

  private static final BigDecimal MOST_PRICE = BigDecimal.valueOf(1_000_000_000);
  private static final BigDecimal MOST_APART = BigDecimal.valueOf(1_000_000);
  private static final BigDecimal MOST_MARKUP = BigDecimal.valueOf(100_000);

  /**
   * Refuses what is out of range.
   *
   * @throws Faulty with the paths {@code .marginPercent}, {@code .ending}, {@code .every}, {@code
   *     .markupPercent}, {@code .hourly} and {@code .discountPercent}
   */
  public PriceRequest {
    List<Fault> faults = new ArrayList<>();
    checkMargin(marginPercent, faults);
    checkEnding(ending, every, faults);
    markupPercent.ifPresent(
        markup ->
            note(
                markup.signum() < 0 || isFine(markup) || markup.compareTo(MOST_MARKUP) > 0,
                new Fault(
                    ".markupPercent",
                    found(markup),
                    "a markup from 0 to 100000 percent, with at most four decimals"),
                faults));
    hourly.ifPresent(
        wage ->
            note(
                wage.signum() < 0 || isFine(wage) || wage.compareTo(MOST_PRICE) > 0,
                new Fault(".hourly", found(wage), "an amount by the hour, 0 or more"),
                faults));
    discountPercent.ifPresent(discount -> checkDiscount(discount, faults));
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** A margin and an ending, of prices one unit apart. */
  public PriceRequest(BigDecimal marginPercent, BigDecimal ending) {
    this(
        marginPercent,
        ending,
        BigDecimal.ONE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Notes a margin that no price can have. */
  static void checkMargin(BigDecimal margin, List<Fault> faults) {
    if (margin == null
        || margin.signum() < 0
        || margin.compareTo(Exact.HUNDRED) >= 0
        || isFine(margin)) {
      String right = "a margin from 0 to under 100 percent, with at most four decimals";
      faults.add(new Fault(".marginPercent", found(margin), right));
    }
  }

  private static void checkEnding(BigDecimal ending, BigDecimal every, List<Fault> faults) {
    boolean apart = every != null && every.signum() > 0 && every.compareTo(MOST_APART) <= 0;
    String far = "how far prices lie apart, above 0 and at most 1000000, such as 1 or 10";
    note(!apart, new Fault(".every", found(every), far), faults);
    BigDecimal most = apart ? every : BigDecimal.ONE;
    if (ending == null || ending.signum() < 0 || ending.compareTo(most) >= 0) {
      String right =
          most.compareTo(BigDecimal.ONE) == 0
              ? "the part of a price behind its whole units, from 0 to under 1, such as 0.99"
              : "what a price ends in, from 0 to under " + found(most);
      faults.add(new Fault(".ending", found(ending), right));
    }
  }

  private static void checkDiscount(BigDecimal discount, List<Fault> faults) {
    boolean wrong =
        discount.signum() <= 0 || discount.compareTo(Exact.HUNDRED) >= 0 || isFine(discount);
    String right = "a discount above 0 and under 100 percent, with at most four decimals";
    note(wrong, new Fault(".discountPercent", found(discount), right), faults);
  }

  private static void note(boolean wrong, Fault fault, List<Fault> faults) {
    if (wrong) {
      faults.add(fault);
    }
  }

  private static boolean isFine(BigDecimal number) {
    return digits(number) > Exact.DECIMALS;
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
