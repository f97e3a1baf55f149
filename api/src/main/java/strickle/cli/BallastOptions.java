package strickle.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.book.Solid;
import strickle.json.BallastAnswer;
import strickle.mix.CoreBase;
import strickle.mix.FormPressure;
import strickle.mix.Uplift;
import strickle.mix.Volume;

/** A core and a mould as they are described on the command line. */
final class BallastOptions {

  private static final String DISPLACED = "--displaced";
  private static final String CORE = "--core";
  private static final String MASS = "--mass";
  private static final String DENSITY = "--density";
  private static final String FACTOR = "--factor";
  private static final String SEALED = "--sealed";
  private static final String SEALED_AREA = "--sealed-area";
  private static final String DEPTH = "--depth";
  private static final String WALL = "--wall";

  private static final double USUAL_FACTOR = 1.5;
  private static final double MOST_FACTOR = 100;
  private static final double MOST = 1e7;
  private static final double MOST_M2 = 1e4;
  private static final double MM2_PER_M2 = 1e6;
  private static final double MM3_PER_ML = 1000;

  @Option(
      names = DISPLACED,
      paramLabel = "VOLUME",
      description = "the core's volume below the surface of the mix")
  private String displaced;

  @Option(
      names = CORE,
      paramLabel = "SOLID",
      description =
          "or the core as a solid, all of it below the surface; \"strickle volume --help\""
              + " names the solids")
  private String core;

  @Option(names = MASS, paramLabel = "MASS", description = "the empty core's own; 0 when left out")
  private String mass;

  @Option(
      names = DENSITY,
      paramLabel = "DENSITY",
      description = "of the wet mix, such as 2250 kg/m3 or 140 lb/ft3")
  private String density;

  @Option(
      names = FACTOR,
      paramLabel = "NUMBER",
      description = "by how much the ballast is to exceed the lift, 1 to 100; 1.5 when left out")
  private String factor;

  @Option(
      names = SEALED,
      description =
          "the bottom of the solid is sealed on the mould's floor, so that no mix gets"
              + " under it")
  private boolean sealed;

  @Option(
      names = SEALED_AREA,
      paramLabel = "AREA",
      description = "or this much of the core is sealed on the floor, --depth below the surface")
  private String sealedArea;

  @Option(
      names = DEPTH,
      paramLabel = "LENGTH",
      description =
          "depth of the mix over the floor; for the pressure there, and for a sealed core"
              + " (the solid's height when left out)")
  private String depth;

  @Option(
      names = WALL,
      paramLabel = "LENGTH",
      description = "width of an upright wall, for the push on it from the surface to --depth")
  private String wall;

  private Given values;

  /** Reads the options and works them out; empty when none was given. */
  Optional<BallastAnswer> read(Given given) {
    values = given;
    Optional<Double> kgPerM3 =
        values
            .amount(DENSITY, density, Amount::density)
            .filter(one -> values.must(Measures.isWet(one), DENSITY, density, Measures.WET));
    Optional<Double> millilitres =
        amount(DISPLACED, displaced, Amount::volume, MOST, "a volume above 0, at most 10000 l");
    Optional<Double> grams =
        values
            .amount(MASS, mass, Amount::mass)
            .filter(one -> values.must(one <= MOST, MASS, mass, "a mass of at most 10000 kg"));
    Optional<Double> mm2 =
        amount(SEALED_AREA, sealedArea, Amount::area, MOST_M2, "an area above 0, at most 10000 m²")
            .map(a -> a * MM2_PER_M2);
    Optional<Double> deep = length(DEPTH, depth);
    Optional<Double> wide = length(WALL, wall);
    double times = factor();
    Optional<Solid> solid = solid(deep);
    mustGoTogether();
    mm2.ifPresent(area -> deep.ifPresent(down -> mustBeAColumn(area * down / MM3_PER_ML)));
    values.done();
    if (kgPerM3.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> ml = solid.map(Volume::ml).or(() -> millilitres);
    return Optional.of(
        new BallastAnswer(
            ml.map(
                volume ->
                    BallastAnswer.Lift.of(
                        uplift(kgPerM3.get(), volume, grams.orElse(0.0), solid, mm2, deep), times)),
            deep.map(down -> pressure(kgPerM3.get(), down, wide)),
            List.of()));
  }

  private Uplift uplift(
      double kgPerM3,
      double ml,
      double grams,
      Optional<Solid> solid,
      Optional<Double> mm2,
      Optional<Double> deep) {
    if (!sealed && mm2.isEmpty()) {
      return Uplift.hung(kgPerM3, ml, grams);
    }
    double base = mm2.orElseGet(() -> CoreBase.mm2(solid.orElseThrow()).orElseThrow());
    double down = deep.orElseGet(() -> CoreBase.heightMm(solid.orElseThrow()).orElseThrow());
    return Uplift.sealed(kgPerM3, ml, grams, base, down);
  }

  private static BallastAnswer.Pressure pressure(
      double kgPerM3, double depthMm, Optional<Double> widthMm) {
    return new BallastAnswer.Pressure(
        depthMm,
        FormPressure.pascals(kgPerM3, depthMm),
        widthMm,
        widthMm.map(width -> FormPressure.wallNewtons(kgPerM3, depthMm, width)));
  }

  private void mustGoTogether() {
    boolean lifted = displaced != null || core != null;
    need(density != null || (!lifted && depth == null), DENSITY, "the density of the wet mix");
    need(
        lifted || depth != null || density == null,
        DISPLACED,
        "a core's volume, --core or --depth");
    need(lifted || (mass == null && factor == null), DISPLACED, "a core's volume, or --core");
    need(
        lifted || (!sealed && sealedArea == null),
        DISPLACED,
        "the sealed core's volume, or --core");
    need(wall == null || depth != null, DEPTH, "how deep the mix stands at the wall");
    need(
        !sealed || core != null,
        CORE,
        "the core as a solid beside --sealed, or --sealed-area in its place");
    need(
        sealedArea == null || depth != null, DEPTH, "how deep the mix stands over the sealed area");
    values.must(
        displaced == null || core == null, DISPLACED, displaced, "one of --displaced and --core");
    values.must(
        !sealed || sealedArea == null,
        SEALED_AREA,
        sealedArea,
        "one of --sealed-area and --sealed");
  }

  private void need(boolean holds, String option, String right) {
    if (!holds) {
      values.fault(new Fault(option, "nothing", right));
    }
  }

  private void mustBeAColumn(double ml) {
    String right = "a sealed area over which the mix at its depth is at most 10000 l";
    values.must(ml <= MOST, SEALED_AREA, sealedArea, right);
  }

  private Optional<Solid> solid(Optional<Double> deep) {
    if (core == null) {
      return Optional.empty();
    }
    Optional<Solid> solid = values.within(CORE, () -> SolidText.read(core));
    return solid
        .filter(
            one -> values.must(Volume.ml(one) <= MOST, CORE, core, "a solid of at most 10000 l"))
        .filter(one -> !sealed || isSealable(one, deep));
  }

  private boolean isSealable(Solid solid, Optional<Double> deep) {
    boolean flat = CoreBase.mm2(solid).isPresent();
    String right = "a solid with a flat bottom, or --sealed-area in place of --sealed";
    double height = CoreBase.heightMm(solid).orElse(0);
    return values.must(flat, CORE, core, right)
        && values.must(
            deep.isEmpty() || deep.get() >= height,
            DEPTH,
            depth,
            "at least the solid's height, as all of it counts as below the surface");
  }

  private double factor() {
    String right = "a number from 1 to 100";
    return values
        .decimal(FACTOR, factor)
        .map(Number::doubleValue)
        .filter(one -> values.must(1 <= one && one <= MOST_FACTOR, FACTOR, factor, right))
        .orElse(USUAL_FACTOR);
  }

  private Optional<Double> length(String option, String text) {
    String right = "a length above 0, at most 100000 mm";
    return amount(option, text, Amount::length, Solid.LONGEST_MM, right);
  }

  private Optional<Double> amount(
      String option, String text, ToDoubleFunction<String> reading, double most, String right) {
    return values
        .amount(option, text, reading)
        .filter(one -> values.must(one > 0 && one <= most, option, text, right));
  }
}
