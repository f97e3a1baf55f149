package strickle.plan;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A plan: who pours, takes out and finishes what, when, and what comes of it. What makes one valid
 * is read by {@link strickle.plan.audit.Audit}.
 *
 * @param book which book it was made from
 * @param from the first moment that may be planned, to the minute
 * @param seed the number the search started from
 * @param coverPercent in how many of a hundred cases the castings of a piece bring what is asked
 *     for, 50 to 99.9; empty when they are counted as they turn out on average
 * @param orderingFrom from when on materials are ordered that are short in stock, where what uses
 *     them waits until they can be there; empty when nothing waits for materials
 * @param lots what is mixed
 * @param tasks everything somebody has to do
 * @param waits what passes by itself; waits of no length may be left out
 * @param ready when each run is ready
 * @param orders what becomes of each order of the book
 * @param totals the plan in five figures
 * @param history what had happened when the plan was laid out anew; empty for one made beforehand
 */
public record Plan(
    String book,
    OffsetDateTime from,
    long seed,
    OptionalDouble coverPercent,
    Optional<OffsetDateTime> orderingFrom,
    List<Lot> lots,
    List<Task> tasks,
    List<Wait> waits,
    List<Ready> ready,
    List<OrderOutcome> orders,
    Totals totals,
    Optional<History> history) {

  /**
   * Takes its own copy of every list.
   *
   * @throws strickle.book.Faulty when a part is missing, {@code from} or {@code orderingFrom} is
   *     not of a year from 1970 to 2999 or the cover not from 50 to 99.9
   */
  public Plan {
    Flaws flaws = new Flaws().time(".from", from);
    flaws.given(".book", book, "which book it was made from");
    flaws.given(".totals", totals, "the totals of the plan");
    lots = flaws.list(".lots", lots);
    tasks = flaws.list(".tasks", tasks);
    waits = flaws.list(".waits", waits);
    ready = flaws.list(".ready", ready);
    orders = flaws.list(".orders", orders);
    history = flaws.optional(".history", history);
    orderingFrom = flaws.optional(".orderingFrom", orderingFrom);
    orderingFrom.ifPresent(at -> flaws.time(".orderingFrom", at));
    Cover.check(flaws, ".coverPercent", coverPercent).raise();
  }

  /** A plan that waits for no materials. */
  public Plan(
      String book,
      OffsetDateTime from,
      long seed,
      OptionalDouble coverPercent,
      List<Lot> lots,
      List<Task> tasks,
      List<Wait> waits,
      List<Ready> ready,
      List<OrderOutcome> orders,
      Totals totals,
      Optional<History> history) {
    this(
        book,
        from,
        seed,
        coverPercent,
        Optional.empty(),
        lots,
        tasks,
        waits,
        ready,
        orders,
        totals,
        history);
  }

  /** A plan made before anything has happened, its castings counted as on average. */
  public Plan(
      String book,
      OffsetDateTime from,
      long seed,
      List<Lot> lots,
      List<Task> tasks,
      List<Wait> waits,
      List<Ready> ready,
      List<OrderOutcome> orders,
      Totals totals) {
    this(
        book,
        from,
        seed,
        OptionalDouble.empty(),
        lots,
        tasks,
        waits,
        ready,
        orders,
        totals,
        Optional.empty());
  }

  /** The same plan with its lots in another order, or others. */
  public Plan withLots(List<Lot> others) {
    return with(others, orders, orderingFrom);
  }

  /** The same plan with other outcomes of its orders. */
  public Plan withOrders(List<OrderOutcome> others) {
    return with(lots, others, orderingFrom);
  }

  /** The same plan, said to wait for materials that are ordered from then on, or for none. */
  public Plan waiting(Optional<OffsetDateTime> ordered) {
    return with(lots, orders, ordered);
  }

  private Plan with(
      List<Lot> otherLots, List<OrderOutcome> others, Optional<OffsetDateTime> ordered) {
    return new Plan(
        book,
        from,
        seed,
        coverPercent,
        ordered,
        otherLots,
        tasks,
        waits,
        ready,
        others,
        totals,
        history);
  }
}
