package strickle.plan.bound;

import strickle.shop.Due;

/** What an order asks for. */
final class Asked {

  private final Due due;
  private final int[] castings;
  private final int ready;
  private final int unit;

  /**
   * An order.
   *
   * @param due when it is due, and what a late unit costs
   * @param castings how many of each kind have to be ready for it, those served before it included
   * @param ready the minute before which these cannot be, whatever else is done
   * @param unit minutes of a late unit
   */
  Asked(Due due, int[] castings, int ready, int unit) {
    this.due = due;
    this.castings = castings;
    this.ready = ready;
    this.unit = unit;
  }

  Due due() {
    return due;
  }

  /** Castings of a kind that have to be ready. */
  int castings(int kind) {
    return castings[kind];
  }

  /** Whether any of it goes through a bottleneck. */
  boolean goesThrough(Bottleneck bottleneck) {
    return bottleneck.concerns(castings);
  }

  /** What it costs at least by itself. */
  long cost() {
    return cost(ready);
  }

  /** What it costs at least when it is not ready before some minute. */
  long cost(int minute) {
    long late = Math.max(0, (long) Math.max(ready, minute) - due.at());
    return Math.ceilDiv(late, (long) unit) * due.weight();
  }
}
