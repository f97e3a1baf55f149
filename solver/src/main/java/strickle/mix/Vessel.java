package strickle.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strickle.book.Fault;
import strickle.book.Solid;

/**
 * Solids that stand with an open mouth at the top. Points are seen from the middle of the mouth: x
 * along the length, y along the width, z downward; one quarter of a solid stands for all.
 */
final class Vessel {

  /** Points on a dome's curve; the wall is then right to a millionth of the radius. */
  private static final int POINTS = 1000;

  private static final double QUARTER = Math.PI / 2;

  private Vessel() {}

  private record Point(double x, double y, double z) {
    double fromAxis() {
      return Math.hypot(x, y);
    }
  }

  /** What has no mouth. */
  static List<Fault> faults(Solid outer, Solid inner) {
    List<Fault> faults = new ArrayList<>();
    add(faults, ".outer", outer);
    add(faults, ".inner", inner);
    return faults;
  }

  private static void add(List<Fault> faults, String path, Solid solid) {
    if (solid instanceof Solid.Torus || solid instanceof Solid.Ellipsoid) {
      String right = "a box, cylinder, cone-frustum, pyramid-frustum, spherical-cap or hemisphere";
      faults.add(new Fault(path, "a solid without a mouth", right));
    }
  }

  /** From the mouth to the deepest point. */
  static double depth(Solid solid) {
    return switch (solid) {
      case Solid.Box box -> box.heightMm();
      case Solid.Cylinder cylinder -> cylinder.heightMm();
      case Solid.ConeFrustum cone -> cone.heightMm();
      case Solid.PyramidFrustum pyramid -> pyramid.heightMm();
      case Solid.SphericalCap cap -> cap.heightMm();
      case Solid.Hemisphere half -> half.radiusMm();
      case Solid.Torus ring -> throw mouthless(ring);
      case Solid.Ellipsoid ellipsoid -> throw mouthless(ellipsoid);
    };
  }

  /** Whether it ends in a flat floor. */
  static boolean hasFloor(Solid solid) {
    return !(solid instanceof Solid.SphericalCap) && !(solid instanceof Solid.Hemisphere);
  }

  /** The least distance from the inner solid to the side of the outer; below 0 when outside. */
  static double wall(Solid outer, Solid inner) {
    return edge(inner).mapToDouble(point -> toSide(outer, point)).min().orElseThrow();
  }

  private static Stream<Point> edge(Solid solid) {
    return switch (solid) {
      case Solid.Box box -> corners(box.lengthMm(), box.widthMm(), 0, box.heightMm());
      case Solid.Cylinder(double radius, double height) -> rims(radius, radius, height);
      case Solid.ConeFrustum(double bottom, double top, double height) -> rims(top, bottom, height);
      case Solid.PyramidFrustum p ->
          Stream.concat(
              corners(p.topLengthMm(), p.topWidthMm(), 0, 0),
              corners(p.bottomLengthMm(), p.bottomWidthMm(), p.heightMm(), p.heightMm()));
      case Solid.SphericalCap(double radius, double height) -> dome(radius, height);
      case Solid.Hemisphere(double radius) -> dome(radius, radius);
      case Solid.Torus ring -> throw mouthless(ring);
      case Solid.Ellipsoid ellipsoid -> throw mouthless(ellipsoid);
    };
  }

  private static Stream<Point> corners(double length, double width, double upper, double lower) {
    return Stream.of(
        new Point(length / 2, width / 2, upper), new Point(length / 2, width / 2, lower));
  }

  // Flat sides are along the length and the width, so a rim is nearest to them there.
  private static Stream<Point> rims(double top, double bottom, double depth) {
    return Stream.concat(ring(top, 0), ring(bottom, depth));
  }

  private static Stream<Point> ring(double radius, double depth) {
    return Stream.of(new Point(radius, 0, depth), new Point(0, radius, depth));
  }

  /** The curve of a dome from its mouth to its deepest point. */
  private static Stream<Point> dome(double radius, double height) {
    double middle = height - radius;
    double from = Math.asin(Math.clamp(-middle / radius, -1, 1));
    return IntStream.rangeClosed(0, POINTS)
        .mapToDouble(i -> from + (QUARTER - from) * i / POINTS)
        .boxed()
        .flatMap(at -> ring(radius * Math.cos(at), middle + radius * Math.sin(at)));
  }

  private static double toSide(Solid outer, Point at) {
    return switch (outer) {
      case Solid.Box box -> Math.min(box.lengthMm() / 2 - at.x(), box.widthMm() / 2 - at.y());
      case Solid.Cylinder cylinder -> cylinder.radiusMm() - at.fromAxis();
      case Solid.ConeFrustum(double bottom, double top, double height) ->
          toSlope(top, bottom, height, at.fromAxis(), at.z());
      case Solid.PyramidFrustum p ->
          Math.min(
              toSlope(p.topLengthMm() / 2, p.bottomLengthMm() / 2, p.heightMm(), at.x(), at.z()),
              toSlope(p.topWidthMm() / 2, p.bottomWidthMm() / 2, p.heightMm(), at.y(), at.z()));
      case Solid.SphericalCap(double radius, double height) ->
          radius - Math.hypot(at.fromAxis(), at.z() - (height - radius));
      case Solid.Hemisphere(double radius) -> radius - Math.hypot(at.fromAxis(), at.z());
      case Solid.Torus ring -> throw mouthless(ring);
      case Solid.Ellipsoid ellipsoid -> throw mouthless(ellipsoid);
    };
  }

  private static IllegalArgumentException mouthless(Solid solid) {
    return new IllegalArgumentException(solid + " has no mouth");
  }

  /** The distance to a sloping side, square to it, as calipers would take it. */
  private static double toSlope(double top, double bottom, double height, double out, double z) {
    double side = top + (bottom - top) * z / height;
    return (side - out) * height / Math.hypot(height, bottom - top);
  }
}
