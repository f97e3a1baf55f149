package strickle.mix;

import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.ShapePart;
import strickle.book.Solid;

/**
 * The surface of solids, for what is put on it. Formulas as in any geometry text (values from
 * memory); an ellipsoid, which has no closed formula, is summed numerically to about a millionth.
 */
public final class Surface {

  private static final double ROUND_OFF = 1e-12;

  private Surface() {}

  /** The faces of a solid, in mm². */
  public static Faces of(Solid solid) {
    return switch (solid) {
      case Solid.Box(double length, double width, double height) ->
          new Faces(length * width, length * width, 2 * (length + width) * height);
      case Solid.Cylinder(double radius, double height) ->
          new Faces(disc(radius), disc(radius), 2 * Math.PI * radius * height);
      case Solid.ConeFrustum(double bottom, double top, double height) ->
          new Faces(
              disc(bottom), disc(top), Math.PI * (bottom + top) * Math.hypot(height, bottom - top));
      case Solid.PyramidFrustum frustum -> pyramid(frustum);
      case Solid.SphericalCap(double radius, double height) ->
          new Faces(Math.PI * height * (2 * radius - height), 0, 2 * Math.PI * radius * height);
      case Solid.Hemisphere(double radius) -> new Faces(disc(radius), 0, 2 * disc(radius));
      case Solid.Torus(double ring, double tube) ->
          new Faces(0, 0, 4 * Math.PI * Math.PI * ring * tube);
      case Solid.Ellipsoid(double a, double b, double c) -> new Faces(0, 0, ellipsoid(a, b, c));
    };
  }

  /**
   * The surface of a shape in mm²: of what is added all faces, of what is taken away the walls of
   * the hollow less its opening, which is at its top (of a cap or half a sphere its flat face).
   * Solids that touch each other are not known of.
   *
   * @throws Faulty when a hollow has no face to open at, or nothing is left; paths relative to the
   *     list
   */
  public static double mm2(List<ShapePart> shape) {
    double sum = 0;
    double added = 0;
    for (int i = 0; i < shape.size(); i++) {
      Faces faces = of(shape.get(i).solid());
      boolean hollow = shape.get(i).subtract();
      if (hollow && !(faces.openingMm2() > 0)) {
        throw refused("[" + i + "]", "a closed hollow", "a hollow with a flat face to open at");
      }
      sum += hollow ? faces.allMm2() - 2 * faces.openingMm2() : faces.allMm2();
      added += hollow ? 0 : faces.allMm2();
    }
    if (!(sum > ROUND_OFF * added) || !(added > 0)) {
      throw refused("", "solids that leave no surface", "solids that leave more than 0 mm²");
    }
    mustHold(shape);
    return sum;
  }

  /** Hollows are in what they are taken from: each in the only body, all together in several. */
  private static void mustHold(List<ShapePart> shape) {
    List<Solid> bodies =
        shape.stream().filter(part -> !part.subtract()).map(ShapePart::solid).toList();
    for (int i = 0; i < shape.size() && bodies.size() == 1; i++) {
      Solid solid = shape.get(i).solid();
      if (shape.get(i).subtract() && Vessel.faults(bodies.get(0), solid).isEmpty()) {
        mustHold(bodies.get(0), solid, "[" + i + "]");
      }
    }
    try {
      Volume.ml(shape);
    } catch (Faulty nothing) {
      Fault fault = nothing.faults().get(0);
      throw refused("", fault.found(), fault.right());
    }
  }

  private static void mustHold(Solid body, Solid hollow, String path) {
    try {
      Shell.of(body, hollow);
    } catch (Faulty outside) {
      throw refused(
          path,
          outside.faults().get(0).found(),
          "a hollow that is wholly inside the body and opens at its top");
    }
  }

  private static Faulty refused(String path, String found, String right) {
    return new Faulty(List.of(new Fault(path, found, right)));
  }

  private static double disc(double radius) {
    return Math.PI * radius * radius;
  }

  /** Four slanted sides between two ends that lie over each other's middle. */
  private static Faces pyramid(Solid.PyramidFrustum f) {
    double length = (f.bottomLengthMm() - f.topLengthMm()) / 2;
    double width = (f.bottomWidthMm() - f.topWidthMm()) / 2;
    double long2 = (f.bottomLengthMm() + f.topLengthMm()) * Math.hypot(f.heightMm(), width);
    double wide2 = (f.bottomWidthMm() + f.topWidthMm()) * Math.hypot(f.heightMm(), length);
    return new Faces(
        f.bottomLengthMm() * f.bottomWidthMm(), f.topLengthMm() * f.topWidthMm(), long2 + wide2);
  }

  /** One eighth of it, summed by midpoints over both angles, eight times. */
  private static double ellipsoid(double a, double b, double c) {
    int parts = 1000;
    double step = Math.PI / 2 / parts;
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      sum += ring(a, b, c, (i + 0.5) * step, step, parts);
    }
    return 8 * sum;
  }

  private static double ring(double a, double b, double c, double polar, double step, int parts) {
    double sin = Math.sin(polar);
    double cos = Math.cos(polar);
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      double x = Math.cos((i + 0.5) * step);
      double y = Math.sin((i + 0.5) * step);
      double slope = b * b * x * x + a * a * y * y;
      sum += Math.sqrt(a * a * b * b * cos * cos + c * c * sin * sin * slope);
    }
    return sum * sin * step * step;
  }
}
