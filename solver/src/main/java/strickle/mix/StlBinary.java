package strickle.mix;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Binary STL: 80 bytes of anything, a count, then 50 bytes a triangle (normal, three corners, two
 * bytes of anything), little-endian.
 */
final class StlBinary {

  private static final int HEADER = 84;
  private static final int COUNT_AT = 80;
  private static final int TRIANGLE = 50;
  private static final int NORMAL = 12;

  private StlBinary() {}

  /**
   * Whether the bytes are to be read as binary: their length fits their count, or they are not
   * text. A binary file may well begin with "solid", and a text file's length never fits: read as a
   * count, four of its characters mean gigabytes.
   */
  static boolean matches(byte[] file) {
    return (file.length >= HEADER && length(file) == file.length) || !StlText.matches(file);
  }

  /**
   * Nine coordinates for every triangle.
   *
   * @throws strickle.book.Faulty when the length does not fit the count, there are too many
   *     triangles, or a coordinate is impossible
   */
  static double[] read(byte[] file) {
    if (file.length < HEADER || length(file) != file.length) {
      throw StlMesh.refused(
          "neither text STL nor a whole binary STL file (" + file.length + " bytes)",
          file.length < HEADER
              ? "an STL file"
              : "text that starts with \"solid\", or the " + length(file) + " bytes of its count");
    }
    long triangles = count(file);
    if (triangles > StlMesh.MOST_TRIANGLES) {
      throw Coordinates.tooMany(Long.toString(triangles));
    }
    ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    Coordinates corners = new Coordinates((int) triangles);
    for (int at = HEADER; at < file.length; at += TRIANGLE) {
      int triangle = (at - HEADER) / TRIANGLE + 1;
      for (int i = 0; i < 9; i++) {
        corners.add(bytes.getFloat(at + NORMAL + Float.BYTES * i), "triangle", triangle);
      }
    }
    return corners.all();
  }

  private static long length(byte[] file) {
    return HEADER + TRIANGLE * count(file);
  }

  private static long count(byte[] file) {
    int count = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).getInt(COUNT_AT);
    return Integer.toUnsignedLong(count);
  }
}
