package strickle.mix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The bodies of a mesh: triangles that are joined along edges, directly or through others. */
final class Bodies {

  private static final int PER_TRIANGLE = 9;
  private static final int AXES = 3;

  private final int[] first;

  /** So many triangles, none joined with another. */
  Bodies(int triangles) {
    this.first = IntStream.range(0, triangles).toArray();
  }

  /** Says that two triangles share an edge. */
  void join(int one, int other) {
    int a = root(one);
    int b = root(other);
    first[Math.max(a, b)] = Math.min(a, b);
  }

  private int root(int triangle) {
    int at = triangle;
    while (first[at] != at) {
      first[at] = first[first[at]];
      at = first[at];
    }
    return at;
  }

  /**
   * One body.
   *
   * @param cubicUnits its volume, below 0 when its faces are wound inward
   * @param box its least and then its largest coordinates along the three axes
   */
  record Body(double cubicUnits, List<Double> box) {

    /** Whether the box of another lies in this one's. */
    boolean boxHolds(Body other) {
      return IntStream.range(0, AXES)
          .allMatch(
              axis ->
                  box.get(axis) <= other.box.get(axis)
                      && other.box.get(AXES + axis) <= box.get(AXES + axis));
    }

    /** Whether two boxes share room, so that the bodies may. */
    boolean boxMeets(Body other) {
      return IntStream.range(0, AXES)
          .allMatch(
              axis ->
                  box.get(axis) < other.box.get(AXES + axis)
                      && other.box.get(axis) < box.get(AXES + axis));
    }
  }

  /**
   * The bodies that enclose something, in the order of the file.
   *
   * @param corners nine coordinates a triangle
   */
  List<Body> of(double[] corners) {
    List<Body> bodies = new ArrayList<>();
    int[] roots = IntStream.range(0, first.length).map(this::root).toArray();
    for (int[] triangles : byRoot(roots)) {
      double volume = SignedVolume.of(corners, triangles);
      if (volume != 0) {
        bodies.add(new Body(volume, box(corners, triangles)));
      }
    }
    return bodies;
  }

  private static List<int[]> byRoot(int[] roots) {
    long[] keys =
        IntStream.range(0, roots.length)
            .mapToLong(i -> ((long) roots[i] << Integer.SIZE) | i)
            .sorted()
            .toArray();
    List<int[]> groups = new ArrayList<>();
    for (int i = 0; i < keys.length; ) {
      int end = i;
      while (end < keys.length && keys[end] >> Integer.SIZE == keys[i] >> Integer.SIZE) {
        end++;
      }
      groups.add(Arrays.stream(keys, i, end).mapToInt(key -> (int) key).toArray());
      i = end;
    }
    return groups;
  }

  private static List<Double> box(double[] corners, int[] triangles) {
    Double[] box = new Double[2 * AXES];
    Arrays.fill(box, 0, AXES, Double.POSITIVE_INFINITY);
    Arrays.fill(box, AXES, 2 * AXES, Double.NEGATIVE_INFINITY);
    for (int triangle : triangles) {
      for (int i = 0; i < PER_TRIANGLE; i++) {
        double at = corners[triangle * PER_TRIANGLE + i];
        int axis = i % AXES;
        box[axis] = Math.min(box[axis], at);
        box[AXES + axis] = Math.max(box[AXES + axis], at);
      }
    }
    return List.of(box);
  }
}
