package strickle.shop;

import java.util.Arrays;

/**
 * How things stood after every so many claims of the order that the search is at. A neighbour of it
 * is decoded from the last of these places that comes before anything it does otherwise; and when,
 * behind its last change, things stand as they did there, the rest is known to come out the same.
 * So a schedule is what it would be without, and found sooner.
 */
final class Checkpoints {

  /** So many at most: each takes time to write down as well. */
  private static final int MOST = 16;

  /** They are at least so many claims apart. */
  private static final int CLOSEST = 8;

  /** A shorter list is decoded sooner than things are written down. */
  static final int FEWEST_CLAIMS = 60;

  private static final int NOTHING = -1;

  private final State state;
  private final int apart;

  /** Of the order the search is at; after the last one stands the whole schedule. */
  private final Memo[] kept;

  private final Memo[] tried;

  /** The last place of the list that was looked at before each checkpoint, or -1. */
  private final int[] keptReach;

  private final int[] triedReach;
  private final int[] keptOrder;
  private final int count;
  private boolean wanted;
  private boolean known;
  private boolean pending;

  /** The first checkpoint that the order tried last wrote, and the first that it did not. */
  private int first;

  private int next;
  private boolean met;
  private int sameFrom;
  private int reach;

  /** None yet, of a list of so many claims; none ever, of a list of none. */
  Checkpoints(State state, int claims) {
    this.state = state;
    this.apart = Math.max(CLOSEST, (claims + MOST - 1) / MOST);
    this.count = (claims + apart - 1) / apart;
    this.kept = memos(count + 1);
    this.tried = memos(count);
    this.keptReach = new int[count];
    this.triedReach = new int[count];
    this.keptOrder = new int[claims];
  }

  private static Memo[] memos(int count) {
    Memo[] memos = new Memo[count];
    Arrays.setAll(memos, i -> new Memo());
    return memos;
  }

  /**
   * Puts things back as they stood before the first claim that has to be placed anew.
   *
   * @return the place of that claim, or -1 when all has to be placed from the beginning
   */
  int resume(int[] order) {
    int changed = known ? Arrays.mismatch(order, keptOrder) : 0;
    changed = changed < 0 ? order.length : changed;
    sameFrom = order.length;
    while (known && sameFrom > 0 && order[sameFrom - 1] == keptOrder[sameFrom - 1]) {
      sameFrom--;
    }
    first = 0;
    while (first < count && known && keptReach[first] < changed) {
      first++;
    }
    next = first;
    met = false;
    pending = false;
    return first > 0 ? load(first - 1) : NOTHING;
  }

  private int load(int checkpoint) {
    state.load(kept[checkpoint]);
    reach = keptReach[checkpoint];
    return checkpoint * apart;
  }

  /** Everything has been cleared: nothing in the list has been looked at. */
  void restart() {
    reach = NOTHING;
  }

  /** Notes that the place {@code place} of the list has been looked at. */
  void lookedAt(int place) {
    reach = Math.max(reach, place);
  }

  /**
   * Writes down, at a checkpoint, how things stand before the claim at a place is placed.
   *
   * @return whether the rest is known, in which case all of it is in place now
   */
  boolean pass(int place) {
    if (!wanted || next == count || place != next * apart) {
      return false;
    }
    lookedAt(place - 1);
    state.save(tried[next]);
    triedReach[next] = reach;
    met = known && place >= sameFrom && tried[next].isSameAs(kept[next]);
    if (met) {
      state.load(kept[count]);
    } else {
      next++;
    }
    return met;
  }

  /** The schedule is whole. */
  void complete() {
    pending = wanted;
  }

  /** The search is at the order decoded last. */
  void keep(int[] order) {
    wanted = count > 0;
    if (pending) {
      pending = false;
      takeOver(order);
    }
  }

  private void takeOver(int[] order) {
    for (int i = first; i < next; i++) {
      Memo old = kept[i];
      kept[i] = tried[i];
      tried[i] = old;
      keptReach[i] = triedReach[i];
    }
    for (int i = next; i < count; i++) {
      keptReach[i] = Math.max(keptReach[i], reach);
    }
    if (!met) {
      state.save(kept[count]);
    }
    System.arraycopy(order, 0, keptOrder, 0, order.length);
    known = true;
  }
}
