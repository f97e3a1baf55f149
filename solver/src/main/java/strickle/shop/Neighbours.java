package strickle.shop;

import java.util.random.RandomGenerator;

/**
 * Orders that differ a little from another: one claim elsewhere, two claims exchanged, a few
 * neighbours moved together, or a casting-like claim drawn next to one it could share a lot with.
 */
final class Neighbours {

  /** Of a hundred moves so many draw together, where lots can be shared. */
  private static final int DRAW_PERCENT = 20;

  /** So many, where a due date is missed, let a claim go before the one that holds it up. */
  private static final int CRITICAL_PERCENT = 35;

  /** So many, where lots can be shared or links go back, move a few claims. */
  private static final int FEW_PERCENT = 30;

  private static final int SWAP_PERCENT = 50;

  /** The most claims that are moved together. */
  private static final int MOST_TOGETHER = 6;

  /** Every other move of one claim stays within so many places. */
  private static final int NEAR = 8;

  private static final int HUNDRED = 100;

  private final Tables tables;
  private final Claims claims;
  private final boolean shares;

  /** Of a hundred moves so many, with those that draw together, are of a few claims. */
  private final int fewPercent;

  Neighbours(Tables tables, Claims claims) {
    this.tables = tables;
    this.claims = claims;
    this.shares = claims.count() > claims.jobClaims;
    this.fewPercent =
        shares ? DRAW_PERCENT + FEW_PERCENT : tables.distances.tethered > 0 ? FEW_PERCENT : 0;
  }

  /** Changes an order of two claims or more a little. */
  void vary(int[] order, Critical critical, RandomGenerator random) {
    if (critical.pairs() > 0 && random.nextInt(HUNDRED) < CRITICAL_PERCENT) {
      goFirst(order, critical, random.nextInt(critical.pairs()), random);
    } else {
      vary(order, random);
    }
  }

  /** Lets a claim go before the one it waits for, or that one behind it. */
  private static void goFirst(int[] order, Critical critical, int pair, RandomGenerator random) {
    int held = place(order, critical.held(pair));
    int holder = place(order, critical.holder(pair));
    if (random.nextBoolean()) {
      move(order, held, holder);
    } else {
      move(order, holder, held);
    }
  }

  private static int place(int[] order, int claim) {
    int place = 0;
    while (order[place] != claim) {
      place++;
    }
    return place;
  }

  private void vary(int[] order, RandomGenerator random) {
    int kind = random.nextInt(HUNDRED);
    if (shares && kind < DRAW_PERCENT && drawTogether(order, random)) {
      return;
    }
    if (kind < fewPercent) {
      moveFew(order, random);
    } else {
      changeOne(order, random);
    }
  }

  /** Shuffles so many neighbours, anywhere in the order, among themselves. */
  void shuffle(int[] order, int neighbours, RandomGenerator random) {
    int count = Math.min(neighbours, order.length);
    int first = random.nextInt(order.length - count + 1);
    for (int i = count - 1; i > 0; i--) {
      swap(order, first + i, first + random.nextInt(i + 1));
    }
  }

  /** Puts any claim at any place. */
  void moveOne(int[] order, RandomGenerator random) {
    move(order, random.nextInt(order.length), random.nextInt(order.length));
  }

  /** Puts one claim elsewhere or exchanges two. */
  void changeOne(int[] order, RandomGenerator random) {
    int from = random.nextInt(order.length);
    int to = target(order.length, from, random);
    if (random.nextInt(HUNDRED) < SWAP_PERCENT) {
      swap(order, from, to);
    } else {
      move(order, from, to);
    }
  }

  /** Another place; in a shop with shared lots every other one is near. */
  private int target(int length, int from, RandomGenerator random) {
    boolean near = shares && random.nextBoolean();
    int low = near ? Math.max(0, from - NEAR) : 0;
    int high = near ? Math.min(length - 1, from + NEAR) : length - 1;
    int to = low + random.nextInt(high - low);
    return to < from ? to : to + 1;
  }

  private static void moveFew(int[] order, RandomGenerator random) {
    int few = 1 + random.nextInt(Math.min(MOST_TOGETHER, order.length - 1));
    int places = order.length - few + 1;
    int from = random.nextInt(places);
    int to = random.nextInt(places - 1);
    to = to < from ? to : to + 1;
    for (int i = 0; i < few; i++) {
      if (to < from) {
        move(order, from + i, to + i);
      } else {
        move(order, from, to + few - 1);
      }
    }
  }

  /** Puts the first claim of a job right behind one of another job of its family. */
  private boolean drawTogether(int[] order, RandomGenerator random) {
    int from = firstClaim(order, random.nextInt(order.length), -1);
    if (from < 0) {
      return false;
    }
    int to = firstClaim(order, random.nextInt(order.length), claims.job[order[from]]);
    if (to < 0) {
      return false;
    }
    move(order, from, to < from ? to + 1 : to);
    return true;
  }

  /** The place, from {@code start} on and round, of a first claim that could share with a job. */
  private int firstClaim(int[] order, int start, int with) {
    for (int i = 0; i < order.length; i++) {
      int place = (start + i) % order.length;
      int job = claims.job[order[place]];
      boolean first = job != Claims.BREAK && claims.segment[order[place]] == 0;
      if (first && (with < 0 || (job != with && family(job) == family(with)))) {
        return place;
      }
    }
    return -1;
  }

  private int family(int job) {
    return tables.family[tables.jobKind[job]];
  }

  private static void swap(int[] order, int one, int other) {
    int claim = order[one];
    order[one] = order[other];
    order[other] = claim;
  }

  private static void move(int[] order, int from, int to) {
    int claim = order[from];
    if (from < to) {
      System.arraycopy(order, from + 1, order, from, to - from);
    } else {
      System.arraycopy(order, to, order, to + 1, from - to);
    }
    order[to] = claim;
  }
}
