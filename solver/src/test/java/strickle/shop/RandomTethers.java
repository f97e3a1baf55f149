package strickle.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** A small invented project with least and most lags from start to start. */
final class RandomTethers {

  private final int[] minutes;
  private final int[][] uses;

  /** An activity, another, and how much later than the first the other starts at least. */
  private final int[][] lags;

  private final int[] capacities;

  private RandomTethers(int[] minutes, int[][] uses, int[][] lags, int[] capacities) {
    this.minutes = minutes;
    this.uses = uses;
    this.lags = lags;
    this.capacities = capacities;
  }

  static RandomTethers of(long seed, int activities) {
    Random random = new Random(seed);
    int[] capacities = random.ints(2, 2, 5).toArray();
    int[] minutes = random.ints(activities, 1, 6).toArray();
    int[][] uses = new int[activities][];
    Arrays.setAll(
        uses, i -> Arrays.stream(capacities).map(most -> random.nextInt(most + 1)).toArray());
    List<int[]> lags = new ArrayList<>();
    for (int other = 1; other < activities; other++) {
      for (int one = 0; one < other; one++) {
        if (random.nextInt(activities) < 2) {
          int lag = random.nextInt(8) - 1;
          lags.add(new int[] {one, other, lag});
          if (random.nextInt(2) == 0) {
            lags.add(new int[] {other, one, -lag - random.nextInt(8)});
          }
        }
      }
    }
    lags.add(new int[] {activities - 1, 0, -2 * activities - random.nextInt(9)});
    return new RandomTethers(minutes, uses, lags.toArray(int[][]::new), capacities);
  }

  /** The project as a shop whose lateness is its makespan. */
  Shop shop() {
    int[] all = IntStream.range(0, minutes.length).toArray();
    return Published.lagged(minutes, uses, lags, capacities, all);
  }

  /** The least makespan up to {@code most}, by trying all starts there are; or more, if none. */
  int leastMakespan(int most) {
    return leastMakespan(new int[minutes.length], 0, most, 0);
  }

  private int leastMakespan(int[] starts, int next, int most, int end) {
    if (next == starts.length) {
      return end;
    }
    int least = most + 1;
    for (int start = 0; start + minutes[next] < least; start++) {
      starts[next] = start;
      if (lagsAreKept(starts, next) && unitsAreFree(starts, next)) {
        int whole = Math.max(end, start + minutes[next]);
        least = Math.min(least, leastMakespan(starts, next + 1, least - 1, whole));
      }
    }
    return least;
  }

  private boolean lagsAreKept(int[] starts, int last) {
    return Arrays.stream(lags)
        .filter(lag -> Math.max(lag[0], lag[1]) == last)
        .allMatch(lag -> starts[lag[1]] >= starts[lag[0]] + lag[2]);
  }

  private boolean unitsAreFree(int[] starts, int last) {
    for (int at = starts[last]; at < starts[last] + minutes[last]; at++) {
      for (int resource = 0; resource < capacities.length; resource++) {
        int units = 0;
        for (int one = 0; one <= last; one++) {
          boolean runs = starts[one] <= at && at < starts[one] + minutes[one];
          units += runs ? uses[one][resource] : 0;
        }
        if (units > capacities[resource]) {
          return false;
        }
      }
    }
    return true;
  }
}
