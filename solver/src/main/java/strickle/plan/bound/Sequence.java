package strickle.plan.bound;

import java.util.Arrays;
import java.util.List;

/**
 * The least that orders can cost when all of them have to go through one bottleneck. Whatever the
 * plan, its orders are ready one after the other in some sequence; when the last of the first few
 * is, all castings that these wait for have gone through. So the cheapest sequence, found by
 * working out the cheapest one of every set of orders, costs no more than any plan.
 */
final class Sequence {

  /** Sets of so many orders are still few enough to go through. */
  private static final int MOST_ORDERS = 10;

  private final Bottleneck bottleneck;
  private final int kinds;

  Sequence(Bottleneck bottleneck, int kinds) {
    this.bottleneck = bottleneck;
    this.kinds = kinds;
  }

  /**
   * What the bottleneck adds to what orders cost by themselves, with the orders it is about.
   *
   * @param gain 0 or more
   */
  record Result(long gain, List<Asked> orders) {}

  /** Looks for it. */
  Result of(List<Asked> orders) {
    List<Asked> left = orders.stream().filter(o -> o.goesThrough(bottleneck)).toList();
    for (int before = -1; before != left.size(); ) {
      before = left.size();
      left = withoutPatient(left);
    }
    List<Asked> first = left.stream().limit(MOST_ORDERS).toList();
    long own = first.stream().mapToLong(Asked::cost).sum();
    return new Result(first.size() < 2 ? 0 : cheapest(first) - own, first);
  }

  /** An order that costs no more when it is ready last of all can be, and is left out. */
  private List<Asked> withoutPatient(List<Asked> orders) {
    int all = bottleneck.ready(together(orders, -1L));
    return orders.stream().filter(order -> order.cost(all) > order.cost()).toList();
  }

  private long cheapest(List<Asked> orders) {
    long[] cheapest = new long[1 << orders.size()];
    Arrays.fill(cheapest, Long.MAX_VALUE);
    cheapest[0] = 0;
    for (int set = 1; set < cheapest.length; set++) {
      int ready = bottleneck.ready(together(orders, set));
      for (int last = 0; last < orders.size(); last++) {
        if ((set >> last & 1) != 0) {
          long cost = cheapest[set & ~(1 << last)] + orders.get(last).cost(ready);
          cheapest[set] = Math.min(cheapest[set], cost);
        }
      }
    }
    return cheapest[cheapest.length - 1];
  }

  /** Of each kind as many castings as any order of the set waits for. */
  private int[] together(List<Asked> orders, long set) {
    int[] most = new int[kinds];
    for (int i = 0; i < orders.size(); i++) {
      if (i >= Long.SIZE || (set >> i & 1) != 0) {
        for (int kind = 0; kind < kinds; kind++) {
          most[kind] = Math.max(most[kind], orders.get(i).castings(kind));
        }
      }
    }
    return most;
  }
}
