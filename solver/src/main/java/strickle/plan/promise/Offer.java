package strickle.plan.promise;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import strickle.book.Book;
import strickle.plan.Plan;
import strickle.plan.Planning;

/**
 * A date for the new order, and the plan that keeps it.
 *
 * @param ready when the new order is ready, at once at the earliest
 * @param book the present book and the new order
 * @param plan a plan of that book in which the new order is ready then
 * @param runs ids of the plan's runs that the new order gets pieces of, first ready first; none
 *     when it is served from stock
 * @param stock what it takes from stock; empty when it takes nothing from there
 * @param slips present orders that become ready later than planned, by due
 */
public record Offer(
    OffsetDateTime ready,
    Book book,
    Plan plan,
    List<String> runs,
    Optional<Stock> stock,
    List<Slip> slips) {

  /** Copies the lists. */
  public Offer {
    runs = List.copyOf(runs);
    slips = List.copyOf(slips);
  }

  /** The same offer with the reasons of the plan's late orders. */
  Offer explained() {
    return new Offer(ready, book, Planning.explained(book, plan), runs, stock, slips);
  }

  /** Minutes by which present orders are ready later than planned, all together. */
  long slippedMinutes() {
    return slips.stream()
        .mapToLong(slip -> Duration.between(slip.readyBefore(), slip.ready()).toMinutes())
        .sum();
  }

  /** The slips that a buyer feels. */
  public List<Slip> later() {
    return slips.stream().filter(Slip::isLater).toList();
  }
}
