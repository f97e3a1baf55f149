package strickle.plan.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BinsTest {

  @Test
  void whatIsOverHalfABinSharesWithNothingAsLarge() {
    assertEquals(3, Bins.least(new long[] {6}, new int[] {3}, 10));
    assertEquals(2, Bins.least(new long[] {5}, new int[] {4}, 10));
    assertEquals(3, Bins.least(new long[] {6, 5}, new int[] {2, 2}, 10));
    assertEquals(0, Bins.least(new long[] {6}, new int[] {0}, 10));
  }

  @Test
  void neverMoreThanTheBinsItTakes() {
    Random random = new Random(9);
    for (int i = 0; i < 400; i++) {
      long[] sizes = random.longs(3, 1, 21).toArray();
      int[] counts = random.ints(3, 0, 3).toArray();
      long least = Bins.least(sizes, counts, 20);
      long sum = 0;
      for (int kind = 0; kind < 3; kind++) {
        sum += sizes[kind] * counts[kind];
      }
      assertTrue(least >= Math.ceilDiv(sum, 20L));
      assertTrue(least <= fewest(sizes, counts.clone(), 20, 0, new long[6]));
    }
  }

  /** The fewest bins, by trying every place for every thing. */
  private static int fewest(long[] sizes, int[] counts, long bin, int used, long[] filled) {
    int kind = 0;
    while (kind < counts.length && counts[kind] == 0) {
      kind++;
    }
    if (kind == counts.length) {
      return used;
    }
    counts[kind]--;
    int best = Integer.MAX_VALUE;
    for (int i = 0; i <= used && i < filled.length; i++) {
      if (filled[i] + sizes[kind] <= bin) {
        filled[i] += sizes[kind];
        best = Math.min(best, fewest(sizes, counts, bin, Math.max(used, i + 1), filled));
        filled[i] -= sizes[kind];
      }
    }
    counts[kind]++;
    return best;
  }
}
