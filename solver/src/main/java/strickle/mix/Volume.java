package strickle.mix;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.MeshFile;
import strickle.book.Mould;
import strickle.book.ShapePart;
import strickle.book.Solid;

/** The volume of moulds and solids, in millilitres. */
public final class Volume {

  private static final double MM3_PER_ML = 1000;

  /** A rest this small beside what was added is the round-off of solids that cancel out. */
  private static final double ROUND_OFF = 1e-12;

  private Volume() {}

  /**
   * The volume one filling of the mould takes, without waste, in millilitres, above 0.
   *
   * @throws Faulty when the solids of a shape leave nothing, with a path relative to the mould
   * @throws IllegalStateException when the mould has a mesh that has not been measured
   */
  public static double ml(Mould mould) {
    if (mould.volumeMl().isPresent()) {
      return mould.volumeMl().getAsDouble();
    }
    if (!mould.shape().isEmpty()) {
      return ml(mould.shape());
    }
    return mould.mesh().map(mesh -> measured(mould, mesh)).orElseThrow(() -> volumeless(mould));
  }

  /**
   * The volume of a solid in millilitres.
   *
   * <p>Cone frustum and the general (Heronian) frustum as on geometry-formulas.com/frustum-cone;
   * the others as in any geometry text.
   */
  public static double ml(Solid solid) {
    return mm3(solid) / MM3_PER_ML;
  }

  /**
   * The volume of solids added and taken away, in millilitres, above 0.
   *
   * @throws Faulty with path {@code .shape} when they leave nothing
   */
  public static double ml(List<ShapePart> shape) {
    double added = 0;
    double taken = 0;
    for (ShapePart part : shape) {
      double ml = ml(part.solid());
      added += part.subtract() ? 0 : ml;
      taken += part.subtract() ? ml : 0;
    }
    double left = added - taken;
    if (left <= ROUND_OFF * added) {
      String found = show(added) + " ml added and " + show(taken) + " ml taken away";
      throw new Faulty(List.of(new Fault(".shape", found, "solids that leave more than 0 ml")));
    }
    return left;
  }

  private static double mm3(Solid solid) {
    return switch (solid) {
      case Solid.Box(double length, double width, double height) -> length * width * height;
      case Solid.Cylinder(double radius, double height) -> Math.PI * radius * radius * height;
      case Solid.ConeFrustum(double bottom, double top, double height) ->
          frustum(height, Math.PI * bottom * bottom, Math.PI * top * top);
      case Solid.PyramidFrustum f ->
          frustum(
              f.heightMm(),
              f.bottomLengthMm() * f.bottomWidthMm(),
              f.topLengthMm() * f.topWidthMm());
      case Solid.SphericalCap(double radius, double height) ->
          Math.PI * height * height * (3 * radius - height) / 3;
      case Solid.Hemisphere(double radius) -> 2 * Math.PI * radius * radius * radius / 3;
      case Solid.Torus(double ring, double tube) -> 2 * Math.PI * Math.PI * ring * tube * tube;
      case Solid.Ellipsoid(double a, double b, double c) -> 4 * Math.PI * a * b * c / 3;
    };
  }

  /** h(A1 + A2 + √(A1 A2))/3, for ends that are similar and parallel. */
  private static double frustum(double height, double bottom, double top) {
    return height * (bottom + top + Math.sqrt(bottom * top)) / 3;
  }

  private static double measured(Mould mould, MeshFile mesh) {
    return mesh.measuredMl()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "The mesh "
                        + mesh.file()
                        + " of mould "
                        + mould.id()
                        + " has not been measured yet; measure the file before asking for the"
                        + " mould's volume."));
  }

  private static IllegalStateException volumeless(Mould mould) {
    return new IllegalStateException(
        "Mould " + mould.id() + " gives no volume; it needs volumeMl, a shape or a mesh.");
  }

  private static String show(double ml) {
    return new BigDecimal(ml, new MathContext(6)).stripTrailingZeros().toPlainString();
  }
}
