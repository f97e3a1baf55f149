package strickle.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import strickle.book.ShapePart;
import strickle.book.Solid;
import strickle.mix.StlMesh;
import strickle.mix.Volume;

/**
 * What {@code volume} found out, as its JSON says it.
 *
 * @param volumeMl the volume in millilitres
 * @param from what it was worked out from: solids, vessel, mesh, water or pour
 * @param parts the solids
 * @param wallMm a vessel's side wall at its thinnest
 * @param floorMm a vessel's floor
 * @param triangles how many triangles the mesh has
 * @param bodies how many bodies the mesh is of
 * @param mayCountTwice whether bodies of the mesh may share room, which then is counted twice
 * @param waterKgPerM3 the density taken for the water
 */
public record VolumeAnswer(
    double volumeMl,
    String from,
    List<Part> parts,
    OptionalDouble wallMm,
    OptionalDouble floorMm,
    OptionalInt triangles,
    OptionalInt bodies,
    Optional<Boolean> mayCountTwice,
    OptionalDouble waterKgPerM3) {

  /** The word of its format. */
  public static final String FORMAT = "strickle-volume/1";

  private static final OptionalDouble NONE = OptionalDouble.empty();

  /**
   * One solid.
   *
   * @param solid as it was given
   * @param subtract whether it is taken away
   * @param volumeMl its own volume
   */
  public record Part(String solid, boolean subtract, double volumeMl) {

    /** One solid of a shape. */
    public static Part of(ShapePart part) {
      return new Part(words(part.solid()), part.subtract(), Volume.ml(part.solid()));
    }
  }

  /** A solid in words: "cylinder:radiusMm=50,heightMm=100". */
  public static String words(Solid solid) {
    String measures =
        RecordWriter.object((Record) solid).properties().stream()
            .map(field -> field.getKey() + "=" + field.getValue().decimalValue().toPlainString())
            .collect(Collectors.joining(","));
    return Names.solid(solid.getClass()) + ":" + measures;
  }

  /**
   * A volume of a shape.
   *
   * @throws strickle.book.Faulty when nothing is left of it
   */
  public static VolumeAnswer ofShape(List<ShapePart> shape) {
    return ofSolids(Volume.ml(shape), shape.stream().map(Part::of).toList());
  }

  /** A volume of solids. */
  public static VolumeAnswer ofSolids(double ml, List<Part> parts) {
    return meshless(ml, "solids", parts, NONE, NONE, NONE);
  }

  /** A volume of a vessel. */
  public static VolumeAnswer ofVessel(
      double ml, List<Part> parts, double wallMm, OptionalDouble floorMm) {
    OptionalDouble wall = OptionalDouble.of(wallMm);
    return meshless(ml, "vessel", parts, wall, floorMm, NONE);
  }

  /** A volume of a mesh. */
  public static VolumeAnswer ofMesh(double ml, StlMesh mesh) {
    return new VolumeAnswer(
        ml,
        "mesh",
        List.of(),
        NONE,
        NONE,
        OptionalInt.of(mesh.triangles()),
        OptionalInt.of(mesh.bodies()),
        Optional.of(mesh.mayCountTwice()),
        NONE);
  }

  private static VolumeAnswer meshless(
      double ml,
      String from,
      List<Part> parts,
      OptionalDouble wallMm,
      OptionalDouble floorMm,
      OptionalDouble waterKgPerM3) {
    OptionalInt none = OptionalInt.empty();
    return new VolumeAnswer(
        ml, from, parts, wallMm, floorMm, none, none, Optional.empty(), waterKgPerM3);
  }

  /** A volume by water. */
  public static VolumeAnswer ofWater(double ml, double kgPerM3) {
    OptionalDouble density = OptionalDouble.of(kgPerM3);
    return meshless(ml, "water", List.of(), NONE, NONE, density);
  }

  /** A volume by what a pour took. */
  public static VolumeAnswer ofPour(double ml) {
    return meshless(ml, "pour", List.of(), NONE, NONE, NONE);
  }
}
