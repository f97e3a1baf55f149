package strickle.mix;

/** The surface of a mesh: the sum of its triangles. */
final class StlArea {

  private static final int PER_TRIANGLE = 9;

  private StlArea() {}

  /** Square units of nine coordinates a triangle: half of |(b − a) x (c − a)| each. */
  static double of(double[] corners) {
    double sum = 0;
    for (int i = 0; i < corners.length; i += PER_TRIANGLE) {
      double ux = corners[i + 3] - corners[i];
      double uy = corners[i + 4] - corners[i + 1];
      double uz = corners[i + 5] - corners[i + 2];
      double vx = corners[i + 6] - corners[i];
      double vy = corners[i + 7] - corners[i + 1];
      double vz = corners[i + 8] - corners[i + 2];
      double x = uy * vz - uz * vy;
      double y = uz * vx - ux * vz;
      double z = ux * vy - uy * vx;
      sum += Math.sqrt(x * x + y * y + z * z) / 2;
    }
    return sum;
  }
}
