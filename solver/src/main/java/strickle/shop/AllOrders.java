package strickle.shop;

import java.util.Arrays;

/**
 * Every order of a few claims, one after the other. When each has been tried there is nothing left
 * to look for, however much time there is.
 */
final class AllOrders {

  /** So many claims have 5040 orders, which are tried in a fraction of a second. */
  private static final int MOST_CLAIMS = 7;

  private final Claims claims;

  AllOrders(Claims claims) {
    this.claims = claims;
  }

  /**
   * Whether all orders come to the same schedule, because all claims are of one job: its claims are
   * placed one behind the other, whenever the list asks for them.
   */
  boolean areAlike() {
    return Arrays.stream(claims.job).filter(job -> job != Claims.BREAK).distinct().count() <= 1;
  }

  /** Whether they are few enough to try each within so many schedules. */
  boolean areWithin(long schedules) {
    long orders = 1;
    for (int many = 2; many <= claims.count(); many++) {
      orders *= many;
    }
    return claims.count() <= MOST_CLAIMS && orders <= schedules;
  }

  /** Tries every order, unless the trials are spent before. */
  void tryWith(Trials trials) {
    int[] order = new int[claims.count()];
    Arrays.setAll(order, claim -> claim);
    do {
      trials.tryOrder(order);
    } while (!trials.spent() && advance(order));
  }

  /** Makes the next order by the places of its claims; false behind the last. */
  private static boolean advance(int[] order) {
    int at = order.length - 2;
    while (at >= 0 && order[at] > order[at + 1]) {
      at--;
    }
    if (at < 0) {
      return false;
    }
    int next = order.length - 1;
    while (order[next] < order[at]) {
      next--;
    }
    swap(order, at, next);
    for (int one = at + 1, other = order.length - 1; one < other; one++, other--) {
      swap(order, one, other);
    }
    return true;
  }

  private static void swap(int[] order, int one, int other) {
    int claim = order[one];
    order[one] = order[other];
    order[other] = claim;
  }
}
