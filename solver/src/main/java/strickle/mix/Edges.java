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
 * @param open those that do not join faces in pairs wound the same way round
 * @param crowded those that join two pairs of faces or more: bodies that touch along an edge
 * @param bodies the closed bodies that the faces belong to
 */
record Edges(int all, int open, int crowded, Bodies bodies) {

  /** Bits of a rank or a corner's number: {@link StlMesh#MOST_TRIANGLES} x 3 stays below 2²¹. */
  private static final int BITS = 21;

  private static final long MASK = (1L << BITS) - 1;

  /** Bits of a triangle's number: {@link StlMesh#MOST_TRIANGLES} stays below 2¹⁹. */
  private static final int OF_TRIANGLE = 19;

  private static final long DOWN = 1L << OF_TRIANGLE;

  /** Counts the edges of triangles given as nine coordinates each. */
  static Edges of(double[] corners) {
    int[] numbers = numbers(corners);
    long[] uses = new long[numbers.length];
    int used = 0;
    for (int i = 0; i < numbers.length; i += 3) {
      int a = numbers[i];
      int b = numbers[i + 1];
      int c = numbers[i + 2];
      if (a == b || b == c || c == a) {
        continue; // a triangle shrunk to a line joins its neighbours and encloses nothing
      }
      uses[used++] = edge(a, b) | i / 3;
      uses[used++] = edge(b, c) | i / 3;
      uses[used++] = edge(c, a) | i / 3;
    }
    return count(Arrays.copyOf(uses, used), new Bodies(numbers.length / 3));
  }

  /**
   * Sorts by the edge's two corners and then by direction, so that one edge's uses lie together.
   */
  private static Edges count(long[] uses, Bodies bodies) {
    Arrays.sort(uses);
    int all = 0;
    int open = 0;
    int crowded = 0;
    for (int i = 0; i < uses.length; ) {
      int end = i + 1;
      int down = isDown(uses[i]) ? 1 : 0;
      while (end < uses.length && isOneEdge(uses[i], uses[end])) {
        bodies.join(triangle(uses[i]), triangle(uses[end]));
        down += isDown(uses[end]) ? 1 : 0;
        end++;
      }
      boolean inPairs = 2 * down == end - i;
      all++;
      open += inPairs ? 0 : 1;
      crowded += inPairs && end - i > 2 ? 1 : 0;
      i = end;
    }
    return new Edges(all, open, crowded, bodies);
  }

  private static boolean isOneEdge(long use, long other) {
    return use >> (OF_TRIANGLE + 1) == other >> (OF_TRIANGLE + 1);
  }

  private static boolean isDown(long use) {
    return (use & DOWN) != 0;
  }

  private static int triangle(long use) {
    return (int) (use & (DOWN - 1));
  }

  /** Smaller corner, larger corner, whether it runs down from the larger, room for a triangle. */
  private static long edge(int from, int to) {
    long low = Math.min(from, to);
    long high = Math.max(from, to);
    return (((low << BITS) | high) << (OF_TRIANGLE + 1)) | (from < to ? 0 : DOWN);
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
