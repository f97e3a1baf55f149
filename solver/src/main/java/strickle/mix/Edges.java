package strickle.mix;

import java.util.Arrays;

/**
 * The edges of a triangle mesh, counted: how many there are and how many are open, that is, not
 * used exactly once in each direction.
 *
 * <p>Corners are the same when their coordinates are. Everything is found by sorting, never by
 * hashing, so that no file can be made to take longer than its size asks.
 *
 * @param all edges of the mesh, each counted once however many faces use it
 * @param open those that do not join exactly two faces wound the same way round
 */
record Edges(int all, int open) {

  /** Bits of a rank or a corner's number: {@link StlMesh#MOST_TRIANGLES} x 3 stays below 2²¹. */
  private static final int BITS = 21;

  private static final long MASK = (1L << BITS) - 1;

  /** Counts the edges of triangles given as nine coordinates each. */
  static Edges of(double[] corners) {
    int[] numbers = numbers(corners);
    long[] directed = new long[numbers.length];
    int used = 0;
    for (int i = 0; i < numbers.length; i += 3) {
      int a = numbers[i];
      int b = numbers[i + 1];
      int c = numbers[i + 2];
      if (a == b || b == c || c == a) {
        continue; // a triangle shrunk to a line joins its neighbours and encloses nothing
      }
      directed[used++] = edge(a, b);
      directed[used++] = edge(b, c);
      directed[used++] = edge(c, a);
    }
    return count(Arrays.copyOf(directed, used));
  }

  /**
   * Sorts by the edge's two corners and then by direction, so that one edge's uses lie together.
   */
  private static Edges count(long[] uses) {
    Arrays.sort(uses);
    int all = 0;
    int open = 0;
    for (int i = 0; i < uses.length; ) {
      int end = i + 1;
      while (end < uses.length && uses[end] >> 1 == uses[i] >> 1) {
        end++;
      }
      boolean onceEachWay = end - i == 2 && uses[i] != uses[i + 1];
      all++;
      open += onceEachWay ? 0 : 1;
      i = end;
    }
    return new Edges(all, open);
  }

  /** Smaller corner, larger corner, and as the last bit whether it runs down from the larger. */
  private static long edge(int from, int to) {
    long low = Math.min(from, to);
    long high = Math.max(from, to);
    return (low << BITS | high) << 1 | (from < to ? 0 : 1);
  }

  /** A number for every corner, the same for corners at the same place. */
  private static int[] numbers(double[] corners) {
    long[] keys = new long[corners.length / 3];
    for (int axis = 0; axis < 3; axis++) {
      double[] sorted = sorted(corners, axis);
      for (int i = 0; i < keys.length; i++) {
        long rank = Arrays.binarySearch(sorted, corners[3 * i + axis]);
        keys[i] = keys[i] << BITS | (rank & MASK);
      }
    }
    long[] places = Arrays.stream(keys).sorted().distinct().toArray();
    return Arrays.stream(keys).mapToInt(key -> Arrays.binarySearch(places, key)).toArray();
  }

  /** The different coordinates along one axis, ascending, so that a search has one answer. */
  private static double[] sorted(double[] corners, int axis) {
    double[] values = new double[corners.length / 3];
    for (int i = 0; i < values.length; i++) {
      values[i] = corners[3 * i + axis];
    }
    Arrays.sort(values);
    int distinct = 0;
    for (double value : values) {
      if (distinct == 0 || value != values[distinct - 1]) {
        values[distinct++] = value;
      }
    }
    return Arrays.copyOf(values, distinct);
  }
}
