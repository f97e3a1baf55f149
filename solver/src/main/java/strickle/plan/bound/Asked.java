package strickle.plan.bound;

import strickle.shop.Due;

/**
 * What an order asks for.
 *
 * @param due when it is due, and what a late unit costs
 * @param castings how many of each kind have to be ready for it, those served before it included
 * @param ready the minute before which these cannot be, whatever else is done
 * @param unit minutes of a late unit
 */
record Asked(Due due, int[] castings, int ready, int unit) {

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
