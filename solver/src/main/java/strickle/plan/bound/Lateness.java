package strickle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The least that all orders of a shop can cost together: each by itself, and more where they get
 * into each other's way at a bottleneck. Bottlenecks of different orders add up.
 */
final class Lateness {

  /** A sequence through a bottleneck and what it was found to add. */
  private record Found(Sequence sequence, Sequence.Result result) {}

  private final List<Asked> orders;

  Lateness(List<Asked> orders) {
    this.orders = orders;
  }

  long least(List<Sequence> sequences) {
    List<Found> found = new ArrayList<>();
    for (Sequence one : sequences) {
      Sequence.Result result = one.of(orders);
      if (result.gain() > 0) {
        found.add(new Found(one, result));
      }
    }
    found.sort(Comparator.comparingLong((Found one) -> one.result().gain()).reversed());
    return orders.stream().mapToLong(Asked::cost).sum() + gains(found);
  }

  /** The largest gain, and what others add with the orders that are left. */
  private long gains(List<Found> found) {
    List<Asked> left = new ArrayList<>(orders);
    long gains = 0;
    for (Found one : found) {
      boolean whole = left.containsAll(one.result().orders());
      Sequence.Result result = whole ? one.result() : one.sequence().of(left);
      if (result.gain() > 0) {
        gains += result.gain();
        left.removeAll(result.orders());
      }
    }
    return gains;
  }
}
