package strickle.price.fair;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What is asked of a fair's build.
 *
 * @param fair the fair's id
 * @param budget money there is for packs of materials that the build needs bought, in the book's
 *     currency, 0 or more; empty when it does not matter
 * @param from the first moment that may be planned
 * @param orderingFrom from when on materials can be ordered that are short in stock; nothing that
 *     uses them begins before they can be there
 * @param schedules how many schedules each plan may lay out, 1 or more
 * @param seed where the plans' chance begins
 */
public record FairRequest(
    String fair,
    Optional<BigDecimal> budget,
    OffsetDateTime from,
    OffsetDateTime orderingFrom,
    long schedules,
    long seed) {

  /**
   * Refuses a budget or a number of schedules that cannot be.
   *
   * @throws Faulty with the paths {@code .budget} and {@code .schedules}
   */
  public FairRequest {
    Objects.requireNonNull(fair, "fair");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(orderingFrom, "orderingFrom");
    List<Fault> faults = new ArrayList<>();
    if (budget.filter(money -> money.signum() < 0).isPresent()) {
      faults.add(new Fault(".budget", budget.get().toPlainString(), "an amount of 0 or more"));
    }
    if (schedules < 1) {
      faults.add(new Fault(".schedules", "" + schedules, "a whole number, 1 or more"));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** A request for materials that are ordered when the plan begins. */
  public FairRequest(
      String fair, Optional<BigDecimal> budget, OffsetDateTime from, long schedules, long seed) {
    this(fair, budget, from, from, schedules, seed);
  }
}
