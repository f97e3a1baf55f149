package strickle.mix;

import java.util.Arrays;
import strickle.book.Faulty;

/** Coordinates of a mesh as they are read: nine for every triangle, each of them possible. */
final class Coordinates {

  private static final int PER_TRIANGLE = 9;
  private static final int MOST = PER_TRIANGLE * StlMesh.MOST_TRIANGLES;

  private double[] values;
  private int used;

  /** Makes room for so many triangles, and grows when there are more. */
  Coordinates(int triangles) {
    values = new double[Math.max(1, triangles) * PER_TRIANGLE];
  }

  /**
   * Takes one coordinate.
   *
   * @param place what the file is counted in, "line" or "triangle", for the fault
   * @param number which of them it stands in
   * @throws Faulty when it is not a number within {@link StlMesh#FARTHEST}, or one too many
   */
  void add(double value, String place, int number) {
    if (!(Math.abs(value) <= StlMesh.FARTHEST)) {
      throw StlMesh.refused(
          "a coordinate of " + value + " in " + place + " " + number,
          "coordinates from -1000000 to 1000000");
    }
    if (used == MOST) {
      throw tooMany("more than " + StlMesh.MOST_TRIANGLES);
    }
    if (used == values.length) {
      values = Arrays.copyOf(values, Math.min(MOST, 2 * used));
    }
    values[used++] = value + 0.0; // -0.0 becomes 0.0: both are the same place
  }

  /** Every coordinate taken, in the order it came. */
  double[] all() {
    return Arrays.copyOf(values, used);
  }

  /** The refusal of a mesh with so many triangles. */
  static Faulty tooMany(String count) {
    return StlMesh.refused(
        count + " triangles",
        "at most " + StlMesh.MOST_TRIANGLES + " triangles; export the mesh with fewer");
  }
}
