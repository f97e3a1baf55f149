package strickle.mix;

import java.util.OptionalDouble;
import strickle.book.Solid;

/** The flat bottom of a solid, when it stands on the mould's floor as it is described. */
public final class CoreBase {

  private CoreBase() {}

  /** The area of the bottom in mm²; empty for a solid that has no flat bottom of its own. */
  public static OptionalDouble mm2(Solid solid) {
    return switch (solid) {
      case Solid.Box box -> OptionalDouble.of(box.lengthMm() * box.widthMm());
      case Solid.Cylinder round -> OptionalDouble.of(disc(round.radiusMm()));
      case Solid.ConeFrustum cone -> OptionalDouble.of(disc(cone.bottomRadiusMm()));
      case Solid.PyramidFrustum pyramid ->
          OptionalDouble.of(pyramid.bottomLengthMm() * pyramid.bottomWidthMm());
      case Solid.SphericalCap cap -> OptionalDouble.empty();
      case Solid.Hemisphere half -> OptionalDouble.empty();
      case Solid.Torus ring -> OptionalDouble.empty();
      case Solid.Ellipsoid egg -> OptionalDouble.empty();
    };
  }

  /** The height over that bottom in millimetres; empty where there is no such bottom. */
  public static OptionalDouble heightMm(Solid solid) {
    return switch (solid) {
      case Solid.Box box -> OptionalDouble.of(box.heightMm());
      case Solid.Cylinder round -> OptionalDouble.of(round.heightMm());
      case Solid.ConeFrustum cone -> OptionalDouble.of(cone.heightMm());
      case Solid.PyramidFrustum pyramid -> OptionalDouble.of(pyramid.heightMm());
      case Solid.SphericalCap cap -> OptionalDouble.empty();
      case Solid.Hemisphere half -> OptionalDouble.empty();
      case Solid.Torus ring -> OptionalDouble.empty();
      case Solid.Ellipsoid egg -> OptionalDouble.empty();
    };
  }

  private static double disc(double radius) {
    return Math.PI * radius * radius;
  }
}
