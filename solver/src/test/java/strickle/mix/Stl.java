package strickle.mix;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Meshes and STL files made for tests. A triangle is nine coordinates. */
final class Stl {

  private Stl() {}

  /** The unit corner tetrahedron, wound outward, moved by a vector. */
  static List<double[]> tetrahedron(double x, double y, double z) {
    double[] o = {x, y, z};
    double[] a = {x + 1, y, z};
    double[] b = {x, y + 1, z};
    double[] c = {x, y, z + 1};
    return new ArrayList<>(
        List.of(triangle(o, b, a), triangle(o, a, c), triangle(o, c, b), triangle(a, b, c)));
  }

  /** A cylinder with its wall cut into flat sides between points on the true circle. */
  static List<double[]> cylinder(double radius, double height, int sides) {
    List<double[]> triangles = new ArrayList<>();
    double[] floor = {0, 0, 0};
    double[] top = {0, 0, height};
    for (int i = 0; i < sides; i++) {
      double[] low = onCircle(radius, i, sides, 0);
      double[] lowNext = onCircle(radius, (i + 1) % sides, sides, 0);
      double[] high = onCircle(radius, i, sides, height);
      double[] highNext = onCircle(radius, (i + 1) % sides, sides, height);
      triangles.add(triangle(floor, lowNext, low));
      triangles.add(triangle(top, high, highNext));
      triangles.add(triangle(low, lowNext, highNext));
      triangles.add(triangle(low, highNext, high));
    }
    return triangles;
  }

  private static double[] onCircle(double radius, int i, int sides, double z) {
    double angle = 2 * Math.PI * i / sides;
    return new double[] {radius * Math.cos(angle), radius * Math.sin(angle), z};
  }

  static double[] triangle(double[] a, double[] b, double[] c) {
    return new double[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]};
  }

  /** The same triangle wound the other way round. */
  static double[] flipped(double[] t) {
    return new double[] {t[0], t[1], t[2], t[6], t[7], t[8], t[3], t[4], t[5]};
  }

  static byte[] text(List<double[]> triangles) {
    StringBuilder text = new StringBuilder("solid a name of several words\n");
    for (double[] t : triangles) {
      text.append(" facet normal 0 0 0\n  outer loop\n");
      for (int i = 0; i < 9; i += 3) {
        text.append("   vertex " + t[i] + " " + t[i + 1] + " " + t[i + 2] + "\n");
      }
      text.append("  endloop\n endfacet\n");
    }
    return bytes(text.append("endsolid a name of several words\n").toString());
  }

  static byte[] binary(List<double[]> triangles) {
    return binary("made for a test", triangles);
  }

  static byte[] binary(String header, List<double[]> triangles) {
    ByteBuffer file =
        ByteBuffer.allocate(84 + 50 * triangles.size()).order(ByteOrder.LITTLE_ENDIAN);
    file.put(bytes(header)).putInt(80, triangles.size()).position(84);
    for (double[] triangle : triangles) {
      file.putFloat(0).putFloat(0).putFloat(0);
      for (double coordinate : triangle) {
        file.putFloat((float) coordinate);
      }
      file.putShort((short) 0);
    }
    return file.array();
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
