package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.ShapePart;
import strickle.book.Solid;
import strickle.json.Meshes;
import strickle.json.VolumeAnswer;
import strickle.mix.Shell;
import strickle.mix.StlMesh;
import strickle.mix.Volume;
import strickle.mix.WaterFill;

/**
 * A volume to be worked out, in one of five ways.
 *
 * @param shape solids that are added, and those taken away with "subtract"
 * @param outer the outside of a vessel, one solid, its mouth at the top
 * @param inner its inside, one solid, the mouths level and on one axis
 * @param leastWallMm refuse a vessel whose wall or floor is thinner than this anywhere
 * @param mesh a mesh the studio keeps, by the name of its file
 * @param meshUnit what one unit of the mesh is; mm without it
 * @param waterGrams the mass of the water that fills the mould
 * @param waterC how warm the water is, 0 to 40 °C; 20 without it
 * @param pouredGrams the mass of a mix of known density that filled the mould
 * @param densityKgPerM3 the density of that mix, 100 to 10000
 */
public record VolumeWanted(
    List<ShapePart> shape,
    List<ShapePart> outer,
    List<ShapePart> inner,
    OptionalDouble leastWallMm,
    Optional<String> mesh,
    Optional<LengthUnit> meshUnit,
    OptionalDouble waterGrams,
    OptionalDouble waterC,
    OptionalDouble pouredGrams,
    OptionalDouble densityKgPerM3) {

  private static final double MOST_GRAMS = 1e7;
  private static final double ML_PER_LITRE = 1000;
  private static final double LEAST_DENSITY = 100;
  private static final double MOST_DENSITY = 10_000;

  /** Refuses what is out of range, and more than one way or none. */
  public VolumeWanted {
    boolean vessel = !outer.isEmpty() || !inner.isEmpty();
    long ways =
        Stream.of(
                !shape.isEmpty(),
                vessel,
                mesh.isPresent(),
                waterGrams.isPresent(),
                pouredGrams.isPresent())
            .filter(given -> given)
            .count();
    String right = "one of shape, outer with inner, mesh, waterGrams, pouredGrams with density";
    new Ranges()
        .must(ways == 1, ".shape", ways == 0 ? "nothing" : ways + " ways at once", right)
        .must(!vessel || isOne(outer), ".outer", outer.size() + " solids", "one that is added")
        .must(!vessel || isOne(inner), ".inner", inner.size() + " solids", "one that is added")
        .within(".leastWallMm", leastWallMm, 0, Solid.LONGEST_MM, "a thickness in mm")
        .above(".waterGrams", waterGrams, MOST_GRAMS, "a mass in grams")
        .within(".waterC", waterC, 0, 40, "a temperature in °C")
        .above(".pouredGrams", pouredGrams, MOST_GRAMS, "a mass in grams")
        .within(
            ".densityKgPerM3", densityKgPerM3, LEAST_DENSITY, MOST_DENSITY, "a density in kg/m³")
        .must(
            pouredGrams.isPresent() == densityKgPerM3.isPresent(),
            ".densityKgPerM3",
            densityKgPerM3.isPresent() ? "a density" : "nothing",
            "the density and pouredGrams, or neither")
        .done();
  }

  private static boolean isOne(List<ShapePart> solid) {
    return solid.size() == 1 && !solid.get(0).subtract();
  }

  /**
   * The volume.
   *
   * @param meshes those the studio keeps
   * @throws Faulty when there is none, with its place
   */
  VolumeAnswer answer(Meshes meshes) {
    if (!shape.isEmpty()) {
      return under(".shape", () -> VolumeAnswer.ofShape(shape));
    }
    if (!outer.isEmpty()) {
      return vessel();
    }
    if (mesh.isPresent()) {
      return under(".mesh", () -> ofMesh(meshes.bytes(mesh.get()), meshUnit));
    }
    if (waterGrams.isPresent()) {
      double celsius = waterC.orElse(WaterFill.USUAL_C);
      return VolumeAnswer.ofWater(
          WaterFill.ml(waterGrams.getAsDouble(), celsius), WaterFill.densityKgPerM3(celsius));
    }
    return VolumeAnswer.ofPour(
        pouredGrams.orElseThrow() / densityKgPerM3.orElseThrow() * ML_PER_LITRE);
  }

  /** The volume of a mesh. */
  static VolumeAnswer ofMesh(byte[] stl, Optional<LengthUnit> unit) {
    StlMesh mesh = StlMesh.read(stl);
    return VolumeAnswer.ofMesh(mesh.volumeMl(unit.orElse(LengthUnit.MM)), mesh);
  }

  private VolumeAnswer vessel() {
    Solid outside = outer.get(0).solid();
    Solid inside = inner.get(0).solid();
    Shell shell = Shell.of(outside, inside);
    double least = leastWallMm.orElse(0);
    // Walls are the difference of two lengths: the last digits are not theirs.
    if (shell.thinnestMm() < least * (1 - 1e-12) - 1e-9) {
      String found = "a wall or floor of " + Math.rint(shell.thinnestMm() * 1000) / 1000 + " mm";
      String right = "at least " + Ranges.shown(least) + " mm everywhere (leastWallMm)";
      throw new Faulty(List.of(new Fault(".inner", found, right)));
    }
    return VolumeAnswer.ofVessel(
        shell.volumeMl(),
        List.of(
            VolumeAnswer.Part.of(outer.get(0)),
            new VolumeAnswer.Part(VolumeAnswer.words(inside), true, Volume.ml(inside))),
        shell.wallMm(),
        shell.floorMm());
  }

  private static VolumeAnswer under(String path, Supplier<VolumeAnswer> work) {
    try {
      return work.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(fault -> fault.under(path)).toList());
    }
  }
}
