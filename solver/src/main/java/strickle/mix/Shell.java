package strickle.mix;

import java.util.List;
import java.util.OptionalDouble;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Solid;

/**
 * A vessel: an outer solid less an inner one, both open at the top, their mouths level and on one
 * axis. Of a frustum the top is the mouth; a hemisphere or a cap stands on its dome.
 *
 * @param volumeMl what is between them, in millilitres
 * @param wallMm the side wall at its thinnest, in millimetres, above 0; a dome is all side wall
 * @param floorMm the floor, in millimetres; empty for a dome, and for what is open below as well
 */
public record Shell(double volumeMl, double wallMm, OptionalDouble floorMm) {

  /** Walls thinner than this are round-off. */
  private static final double NOTHING_MM = 1e-9;

  /**
   * Works a vessel out.
   *
   * <p>How far a point inside a convex solid is from its side is a concave function of the point,
   * so that the thinnest wall is found at the inner solid's edge: its corners, rims or dome.
   *
   * @throws Faulty with path {@code .outer} or {@code .inner} for a torus or an ellipsoid, which
   *     have no mouth, and when the inner solid is not wholly inside the outer
   */
  public static Shell of(Solid outer, Solid inner) {
    List<Fault> faults = Vessel.faults(outer, inner);
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    double depth = Vessel.depth(outer);
    double room = depth - Vessel.depth(inner);
    double wall = Vessel.wall(outer, inner);
    boolean through = Math.abs(room) <= NOTHING_MM && Vessel.hasFloor(outer);
    if (room < -NOTHING_MM || (!through && room <= NOTHING_MM) || wall <= NOTHING_MM) {
      throw inside(wall, room);
    }
    boolean floor = Vessel.hasFloor(outer) && !through;
    return new Shell(
        Volume.ml(outer) - Volume.ml(inner),
        wall,
        floor ? OptionalDouble.of(room) : OptionalDouble.empty());
  }

  /** The thinnest of wall and floor, in millimetres. */
  public double thinnestMm() {
    return Math.min(wallMm, floorMm.orElse(wallMm));
  }

  private static Faulty inside(double wall, double room) {
    boolean side = wall <= NOTHING_MM;
    double through = round(side ? -wall : -room);
    String what = side ? "the wall" : "the floor";
    String found =
        through == 0
            ? "a solid that touches " + what + " and leaves it no thickness"
            : "a solid that comes through " + what + " by " + through + " mm";
    String right = "one that is wholly inside the outer solid, mouths level and on one axis";
    return new Faulty(List.of(new Fault(".inner", found, right)));
  }

  private static double round(double mm) {
    return Math.max(0, Math.rint(mm * 1000) / 1000);
  }
}
