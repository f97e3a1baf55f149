package strickle.plan.whatif;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * What a change costs.
 *
 * @param amount what is paid for it, in the book's currency; empty when the book does not say
 * @param eachCasting of a form, what one unit costs for each casting that it lasts for, to four
 *     decimals; of several forms together, of one unit of each
 * @param how what it is paid for, or why it is not known
 */
public record Cost(Optional<BigDecimal> amount, Optional<BigDecimal> eachCasting, String how) {

  /** Refuses a missing part. */
  public Cost {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(eachCasting, "eachCasting");
    Objects.requireNonNull(how, "how");
  }

  /** So much, for this. */
  static Cost of(BigDecimal amount, String how) {
    return new Cost(Optional.of(amount), Optional.empty(), how);
  }

  /** A cost the book says nothing of. */
  static Cost notKnown(String why) {
    return new Cost(Optional.empty(), Optional.empty(), "not known: " + why);
  }

  /** This and another together; not known when one of them is not. */
  Cost plus(Cost other) {
    Optional<BigDecimal> sum = amount.flatMap(one -> other.amount.map(one::add));
    Optional<BigDecimal> each =
        eachCasting
            .map(one -> one.add(other.eachCasting.orElse(BigDecimal.ZERO)))
            .or(other::eachCasting);
    String and = sum.isPresent() ? " and " : "; ";
    return new Cost(sum, each, how.equals(other.how) ? how : how + and + other.how);
  }
}
