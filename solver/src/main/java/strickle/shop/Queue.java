package strickle.shop;

import java.util.Arrays;

/**
 * What is known of the queue before something: for stretches of so many minutes and units, from
 * which minute to which none of them can begin. Those who ask again begin to look behind it.
 */
final class Queue {

  /** So many lengths are known at once; a studio asks for a few dozen. */
  private static final int PLACES = 32;

  private static final int SPREAD = 7;

  private final int[] minutes = new int[PLACES];
  private final int[] units = new int[PLACES];
  private final int[] from = new int[PLACES];
  private final int[] until = new int[PLACES];

  /** Forgets everything. */
  void clear() {
    Arrays.fill(until, Integer.MIN_VALUE);
  }

  void save(Memo memo) {
    memo.put(minutes, PLACES);
    memo.put(units, PLACES);
    memo.put(from, PLACES);
    memo.put(until, PLACES);
  }

  void load(Memo memo) {
    memo.take(minutes, PLACES);
    memo.take(units, PLACES);
    memo.take(from, PLACES);
    memo.take(until, PLACES);
  }

  /**
   * The first minute at or after {@code earliest} of which it is not known that it is too early.
   */
  int behind(int earliest, int needed, int wanted) {
    int at = place(needed, wanted);
    boolean known = earliest < until[at] && from[at] <= earliest;
    return known && minutes[at] == needed && units[at] == wanted ? until[at] : earliest;
  }

  /** Notes that no such stretch begins from {@code earliest} up to {@code first}. */
  void note(int earliest, int first, int needed, int wanted) {
    int at = place(needed, wanted);
    boolean same = minutes[at] == needed && units[at] == wanted;
    boolean longer = same && from[at] <= earliest && earliest <= until[at];
    from[at] = longer ? from[at] : earliest;
    until[at] = longer ? Math.max(until[at], first) : first;
    minutes[at] = needed;
    units[at] = wanted;
  }

  /** Forgets what may have changed because something was given back at a minute or after it. */
  void given(int minute) {
    for (int i = 0; i < PLACES; i++) {
      until[i] = Math.min(until[i], minute - minutes[i] + 1);
    }
  }

  private static int place(int needed, int wanted) {
    return (needed + SPREAD * wanted) & (PLACES - 1);
  }
}
