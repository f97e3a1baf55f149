package strickle.cli;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What {@code volume} found out, as its JSON says it.
 *
 * @param volumeMl the volume in millilitres
 * @param from what it was worked out from: solids, vessel, mesh, water or pour
 * @param parts the solids
 * @param wallMm a vessel's side wall at its thinnest
 * @param floorMm a vessel's floor
 * @param triangles how many triangles the mesh has
 * @param waterKgPerM3 the density taken for the water
 */
record VolumeAnswer(
    double volumeMl,
    String from,
    List<Part> parts,
    OptionalDouble wallMm,
    OptionalDouble floorMm,
    OptionalInt triangles,
    OptionalDouble waterKgPerM3) {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  /**
   * One solid.
   *
   * @param solid as it was given
   * @param subtract whether it is taken away
   * @param volumeMl its own volume
   */
  record Part(String solid, boolean subtract, double volumeMl) {}

  /** A volume of solids. */
  static VolumeAnswer ofSolids(double ml, List<Part> parts) {
    return new VolumeAnswer(ml, "solids", parts, NONE, NONE, OptionalInt.empty(), NONE);
  }

  /** A volume of a vessel. */
  static VolumeAnswer ofVessel(double ml, List<Part> parts, double wallMm, OptionalDouble floorMm) {
    OptionalDouble wall = OptionalDouble.of(wallMm);
    return new VolumeAnswer(ml, "vessel", parts, wall, floorMm, OptionalInt.empty(), NONE);
  }

  /** A volume of a mesh. */
  static VolumeAnswer ofMesh(double ml, int triangles) {
    OptionalInt count = OptionalInt.of(triangles);
    return new VolumeAnswer(ml, "mesh", List.of(), NONE, NONE, count, NONE);
  }

  /** A volume by water. */
  static VolumeAnswer ofWater(double ml, double kgPerM3) {
    OptionalDouble density = OptionalDouble.of(kgPerM3);
    return new VolumeAnswer(ml, "water", List.of(), NONE, NONE, OptionalInt.empty(), density);
  }

  /** A volume by what a pour took. */
  static VolumeAnswer ofPour(double ml) {
    return new VolumeAnswer(ml, "pour", List.of(), NONE, NONE, OptionalInt.empty(), NONE);
  }
}
