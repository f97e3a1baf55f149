package strickle.shop;

import java.util.Arrays;

/**
 * How many units of one resource are held over time: a step function, kept as the minutes at which
 * it changes; neighbouring steps of the same height are joined.
 */
final class Usage {

  private final int capacity;
  private int[] at = new int[16];
  private int[] held = new int[16];
  private int steps;

  /** Where the last search ended; what is asked next is often there. */
  private int near;

  /** No more than that has been held at any time. */
  private int highest;

  private final Queue queue = new Queue();

  Usage(int capacity) {
    this.capacity = capacity;
    clear();
  }

  void clear() {
    steps = 1;
    at[0] = Integer.MIN_VALUE;
    held[0] = 0;
    highest = 0;
    queue.clear();
  }

  int capacity() {
    return capacity;
  }

  void save(Memo memo) {
    memo.put(steps);
    memo.put(at, steps);
    memo.put(held, steps);
  }

  void load(Memo memo) {
    steps = memo.take();
    memo.take(at, steps);
    memo.take(held, steps);
    near = 0;
  }

  void saveHints(Memo memo) {
    memo.put(highest);
    queue.save(memo);
  }

  void loadHints(Memo memo) {
    highest = memo.take();
    queue.load(memo);
  }

  /** The first minute at or after {@code earliest} from which {@code units} are free that long. */
  int firstFree(int earliest, int minutes, int units) {
    int most = capacity - units;
    if (highest <= most) {
      return earliest;
    }
    int start = queue.behind(earliest, minutes, units);
    int begun = start;
    for (int i = stepAt(start); i < steps && (i == 0 || at[i] < start + minutes); i++) {
      if (held[i] > most) {
        start = i + 1 < steps ? Math.max(start, at[i + 1]) : Integer.MAX_VALUE / 2;
      }
    }
    if (start > begun) {
      queue.note(earliest, start, minutes, units);
    }
    return start;
  }

  /**
   * The end of the last stretch beginning before {@code end} in which {@code units} are not free;
   * {@code start} if there is none that ends after it.
   */
  int lastTakenBefore(int start, int end, int units) {
    int most = capacity - units;
    for (int i = stepAt(end - 1); i >= 0; i--) {
      int until = i + 1 < steps ? at[i + 1] : Integer.MAX_VALUE / 2;
      if (until <= start) {
        return start;
      }
      if (held[i] > most) {
        return until;
      }
    }
    return start;
  }

  /** Holds {@code units} more (or, if negative, fewer) over {@code [start, end)}. */
  void add(int start, int end, int units) {
    if (start >= end) {
      return;
    }
    int first = cut(start);
    int last = cut(end);
    for (int i = first; i < last; i++) {
      held[i] += units;
      highest = Math.max(highest, held[i]);
    }
    if (units < 0) {
      queue.given(start);
    }
    join(last);
    join(first);
  }

  /** Units held at the minute {@code minute}. */
  int heldAt(int minute) {
    return held[stepAt(minute)];
  }

  private int cut(int minute) {
    int i = stepAt(minute);
    if (at[i] == minute) {
      return i;
    }
    if (steps == at.length) {
      at = Arrays.copyOf(at, steps * 2);
      held = Arrays.copyOf(held, steps * 2);
    }
    System.arraycopy(at, i + 1, at, i + 2, steps - i - 1);
    System.arraycopy(held, i, held, i + 1, steps - i);
    at[i + 1] = minute;
    steps++;
    return i + 1;
  }

  private void join(int index) {
    if (index > 0 && index < steps && held[index] == held[index - 1]) {
      System.arraycopy(at, index + 1, at, index, steps - index - 1);
      System.arraycopy(held, index + 1, held, index, steps - index - 1);
      steps--;
    }
  }

  private int stepAt(int minute) {
    if (near < steps && at[near] <= minute && (near + 1 == steps || at[near + 1] > minute)) {
      return near;
    }
    int low = 0;
    int rest = steps;
    while (rest > 1) {
      // Chosen rather than branched to, as in Busy.
      int half = rest >>> 1;
      low = at[low + half] <= minute ? low + half : low;
      rest -= half;
    }
    near = low;
    return low;
  }
}
