package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.ShapePart;
import strickle.book.Solid;
import strickle.json.BallastAnswer;
import strickle.mix.CoreBase;
import strickle.mix.FormPressure;
import strickle.mix.Uplift;
import strickle.mix.Volume;

/**
 * A core in wet mix, or wet mix in a mould, to be judged.
 *
 * @param displacedMl the core's volume below the surface, up to 10000000 ml
 * @param core or the core as one solid, all of it below the surface
 * @param massGrams the empty core's own; 0 without it
 * @param densityKgPerM3 of the wet mix, 100 to 10000
 * @param safetyFactor by how much the ballast is to exceed the lift, 1 to 100; 1.5 without it
 * @param sealed whether the bottom of the solid is sealed on the mould's floor, so that no mix gets
 *     under it
 * @param sealedAreaMm2 or so much of the core is sealed on the floor, depthMm below the surface
 * @param depthMm depth of the mix over the floor; the solid's height without it when it is sealed
 * @param wallMm width of an upright wall, for the push on it from the surface to depthMm
 */
public record BallastWanted(
    OptionalDouble displacedMl,
    List<ShapePart> core,
    OptionalDouble massGrams,
    double densityKgPerM3,
    OptionalDouble safetyFactor,
    Optional<Boolean> sealed,
    OptionalDouble sealedAreaMm2,
    OptionalDouble depthMm,
    OptionalDouble wallMm) {

  private static final double USUAL_FACTOR = 1.5;
  private static final double MOST = 1e7;
  private static final double MOST_MM2 = 1e10;
  private static final double MM3_PER_ML = 1000;

  /** Refuses what is out of range or does not go together. */
  public BallastWanted {
    boolean solid = core.size() == 1 && !core.get(0).subtract();
    boolean flat = solid && CoreBase.mm2(core.get(0).solid()).isPresent();
    boolean lifted = displacedMl.isPresent() || !core.isEmpty();
    boolean whole = sealed.orElse(false);
    double height = solid ? CoreBase.heightMm(core.get(0).solid()).orElse(0) : 0;
    double columnMl = sealedAreaMm2.orElse(0) * depthMm.orElse(0) / MM3_PER_ML;
    new Ranges()
        .above(".displacedMl", displacedMl, MOST, "a volume in ml")
        .must(core.isEmpty() || solid, ".core", core.size() + " solids", "one that is added")
        .must(
            core.isEmpty() || displacedMl.isEmpty(),
            ".displacedMl",
            "a volume beside a core",
            "one of the two")
        .must(
            !solid || Volume.ml(core.get(0).solid()) <= MOST,
            ".core",
            "a larger solid",
            "a solid of at most 10000 l")
        .within(".massGrams", massGrams, 0, MOST, "a mass in grams")
        .within(
            ".densityKgPerM3", OptionalDouble.of(densityKgPerM3), 100, 10_000, "a density in kg/m³")
        .within(".safetyFactor", safetyFactor, 1, 100, "a number")
        .above(".sealedAreaMm2", sealedAreaMm2, MOST_MM2, "an area in mm²")
        .above(".depthMm", depthMm, Solid.LONGEST_MM, "a length in mm")
        .above(".wallMm", wallMm, Solid.LONGEST_MM, "a length in mm")
        .must(
            lifted || depthMm.isPresent(), ".displacedMl", "nothing", "a volume, a core or depthMm")
        .must(
            lifted || (massGrams.isEmpty() && safetyFactor.isEmpty()),
            ".displacedMl",
            "nothing",
            "a volume or a core beside its mass or the factor")
        .must(
            lifted || (!whole && sealedAreaMm2.isEmpty()),
            ".displacedMl",
            "nothing",
            "the sealed core's volume, or core")
        .must(
            wallMm.isEmpty() || depthMm.isPresent(), ".depthMm", "nothing", "the depth at the wall")
        .must(
            !whole || flat,
            ".core",
            solid ? "a solid without a flat bottom" : "nothing",
            "a solid with a flat bottom beside sealed, or sealedAreaMm2")
        .must(!whole || sealedAreaMm2.isEmpty(), ".sealedAreaMm2", "an area beside sealed", "one")
        .must(
            sealedAreaMm2.isEmpty() || depthMm.isPresent(),
            ".depthMm",
            "nothing",
            "how deep the mix stands over the sealed area")
        .must(
            !whole || depthMm.isEmpty() || depthMm.getAsDouble() >= height,
            ".depthMm",
            Ranges.shown(depthMm.orElse(0)),
            "at least the solid's height, as all of it counts as below the surface")
        .must(
            columnMl <= MOST,
            ".sealedAreaMm2",
            "more",
            "an area over which the mix is at most 10000 l")
        .done();
  }

  /** What it comes to. */
  BallastAnswer answer() {
    OptionalDouble ml =
        core.isEmpty() ? displacedMl : OptionalDouble.of(Volume.ml(core.get(0).solid()));
    Optional<BallastAnswer.Lift> lift =
        ml.isEmpty()
            ? Optional.empty()
            : Optional.of(
                BallastAnswer.Lift.of(uplift(ml.getAsDouble()), safetyFactor.orElse(USUAL_FACTOR)));
    return new BallastAnswer(lift, pressure(), List.of());
  }

  private Uplift uplift(double ml) {
    double grams = massGrams.orElse(0);
    if (!sealed.orElse(false) && sealedAreaMm2.isEmpty()) {
      return Uplift.hung(densityKgPerM3, ml, grams);
    }
    double base = sealedAreaMm2.orElseGet(() -> CoreBase.mm2(core.get(0).solid()).orElseThrow());
    double down = depthMm.orElseGet(() -> CoreBase.heightMm(core.get(0).solid()).orElseThrow());
    return Uplift.sealed(densityKgPerM3, ml, grams, base, down);
  }

  private Optional<BallastAnswer.Pressure> pressure() {
    if (depthMm.isEmpty()) {
      return Optional.empty();
    }
    double depth = depthMm.getAsDouble();
    Optional<Double> width = wallMm.stream().boxed().findFirst();
    return Optional.of(
        new BallastAnswer.Pressure(
            depth,
            FormPressure.pascals(densityKgPerM3, depth),
            width,
            width.map(mm -> FormPressure.wallNewtons(densityKgPerM3, depth, mm))));
  }
}
