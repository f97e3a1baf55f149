package strickle.mix;

/** The volume that triangles enclose: one sixth of Σ a·(b×c) (divergence theorem). */
final class SignedVolume {

  private static final int PER_TRIANGLE = 9;

  private SignedVolume() {}

  /**
   * The volume inside closed triangles, below 0 when they are wound inward. It is seen from the
   * first triangle's corner: far from the origin the products would lose their last digits.
   *
   * @param corners nine coordinates a triangle
   * @param triangles which of them
   */
  static double of(double[] corners, int[] triangles) {
    int from = triangles[0] * PER_TRIANGLE;
    double sum = 0;
    for (int triangle : triangles) {
      int i = triangle * PER_TRIANGLE;
      double ax = corners[i] - corners[from];
      double ay = corners[i + 1] - corners[from + 1];
      double az = corners[i + 2] - corners[from + 2];
      double bx = corners[i + 3] - corners[from];
      double by = corners[i + 4] - corners[from + 1];
      double bz = corners[i + 5] - corners[from + 2];
      double cx = corners[i + 6] - corners[from];
      double cy = corners[i + 7] - corners[from + 1];
      double cz = corners[i + 8] - corners[from + 2];
      sum += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }
    return sum / 6;
  }
}
