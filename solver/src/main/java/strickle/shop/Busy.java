package strickle.shop;

import java.util.Arrays;

/**
 * What one worker is busy with, in working minutes: sorted blocks, touching ones joined, so that a
 * packed week is a few numbers.
 */
final class Busy {

  private int[] from = new int[16];
  private int[] to = new int[16];
  private int blocks;

  /** Where the last search ended; what is asked next is often there. */
  private int near;

  private final Queue queue = new Queue();

  void clear() {
    blocks = 0;
    queue.clear();
  }

  void save(Memo memo) {
    memo.put(blocks);
    memo.put(from, blocks);
    memo.put(to, blocks);
  }

  void load(Memo memo) {
    blocks = memo.take();
    memo.take(from, blocks);
    memo.take(to, blocks);
    near = 0;
  }

  void saveHints(Memo memo) {
    queue.save(memo);
  }

  void loadHints(Memo memo) {
    queue.load(memo);
  }

  /** The first working minute at or after {@code earliest} from which {@code minutes} are free. */
  int firstFree(int earliest, int minutes) {
    int start = queue.behind(earliest, minutes, 1);
    int i = firstEndingAfter(start);
    if (i == blocks || from[i] >= start + minutes) {
      return start;
    }
    while (i < blocks && from[i] < start + minutes) {
      start = to[i];
      i++;
    }
    near = i;
    queue.note(earliest, start, minutes, 1);
    return start;
  }

  /** Takes {@code [start, end)}, which must be free. */
  void take(int start, int end) {
    int i = firstEndingAfter(start);
    boolean joinsBefore = i > 0 && to[i - 1] == start;
    boolean joinsAfter = i < blocks && from[i] == end;
    if (joinsBefore && joinsAfter) {
      to[i - 1] = to[i];
      close(i);
    } else if (joinsBefore) {
      to[i - 1] = end;
    } else if (joinsAfter) {
      from[i] = start;
    } else {
      open(i, start, end);
    }
  }

  /** Gives {@code [start, end)} back, which must have been taken. */
  void give(int start, int end) {
    queue.given(start);
    int i = firstEndingAfter(start);
    boolean restBefore = from[i] < start;
    boolean restAfter = to[i] > end;
    if (restBefore && restAfter) {
      open(i, from[i], start);
      from[i + 1] = end;
    } else if (restBefore) {
      to[i] = start;
    } else if (restAfter) {
      from[i] = end;
    } else {
      close(i);
    }
  }

  /** The first block that ends after {@code at}; blocks are mostly asked for near the end. */
  private int firstEndingAfter(int at) {
    if (near <= blocks && (near == 0 || to[near - 1] <= at) && (near == blocks || to[near] > at)) {
      return near;
    }
    int low = 0;
    int rest = blocks;
    while (rest > 0) {
      // Which half it is is as good as chance: choosing needs no guess of the processor's.
      int half = (rest + 1) >>> 1;
      low = to[low + half - 1] <= at ? low + half : low;
      rest -= half;
    }
    near = low;
    return low;
  }

  private void open(int index, int start, int end) {
    if (blocks == from.length) {
      from = Arrays.copyOf(from, blocks * 2);
      to = Arrays.copyOf(to, blocks * 2);
    }
    System.arraycopy(from, index, from, index + 1, blocks - index);
    System.arraycopy(to, index, to, index + 1, blocks - index);
    from[index] = start;
    to[index] = end;
    blocks++;
  }

  private void close(int index) {
    blocks--;
    System.arraycopy(from, index + 1, from, index, blocks - index);
    System.arraycopy(to, index + 1, to, index, blocks - index);
  }
}
