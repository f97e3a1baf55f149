package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.ShapePart;
import strickle.book.Solid;
import strickle.json.VolumeAnswer;
import strickle.mix.Shell;
import strickle.mix.StlMesh;
import strickle.mix.Volume;
import strickle.mix.WaterFill;

/** The ways in which a volume can be given on the command line, one of them at a time. */
final class VolumeWays {

  private static final String WAYS =
      "one of --add, --outer with --inner, --mesh, --water-grams, --poured-grams";

  @Option(
      names = SolidList.ADD,
      paramLabel = "SOLID",
      description = "a solid; may be given several times")
  private List<String> add = new ArrayList<>();

  @Option(
      names = SolidList.SUBTRACT,
      paramLabel = "SOLID",
      description = "a solid taken away from those added; may be given several times")
  private List<String> subtract = new ArrayList<>();

  @Option(
      names = "--outer",
      paramLabel = "SOLID",
      description = "the outside of a vessel, its mouth at the top")
  private String outer;

  @Option(
      names = "--inner",
      paramLabel = "SOLID",
      description = "its inside, the mouths level and on one axis")
  private String inner;

  @Option(
      names = "--least-wall-mm",
      paramLabel = "LENGTH",
      description = "refuse a vessel whose wall or floor is thinner than this anywhere")
  private String leastWall;

  @Mixin private final MeshOptions mesh = new MeshOptions();

  @Option(
      names = "--water-grams",
      paramLabel = "MASS",
      description = "the mass of the water that fills the mould")
  private String water;

  @Option(
      names = "--water-c",
      paramLabel = "TEMPERATURE",
      description = "how warm the water is, 0 to 40 °C; 20 when left out")
  private String waterC;

  @Option(
      names = "--poured-grams",
      paramLabel = "MASS",
      description = "the mass of a mix of known density that filled the mould")
  private String poured;

  @Option(
      names = "--density",
      paramLabel = "DENSITY",
      description = "the density of that mix, such as 2150 (kg/m³) or 134lb/ft3")
  private String density;

  /**
   * The volume by the way that was given.
   *
   * @throws Faulty with all that is wrong
   */
  VolumeAnswer read(Given values) {
    List<Supplier<VolumeAnswer>> given = new ArrayList<>();
    way(given, !add.isEmpty() || !subtract.isEmpty(), () -> solids(values));
    way(given, outer != null || inner != null || leastWall != null, () -> vessel(values));
    way(given, mesh.given(), () -> mesh(values));
    way(given, water != null || waterC != null, () -> water(values));
    way(given, poured != null || density != null, () -> pour(values));
    if (given.size() != 1) {
      String found = given.isEmpty() ? "nothing to work a volume out from" : "several ways at once";
      values.fault(new Fault("volume", found, WAYS));
      values.done();
    }
    return given.get(0).get();
  }

  private static void way(
      List<Supplier<VolumeAnswer>> ways, boolean given, Supplier<VolumeAnswer> way) {
    if (given) {
      ways.add(way);
    }
  }

  private VolumeAnswer solids(Given values) {
    SolidList solids = SolidList.read(values, add, subtract);
    values.done();
    double ml = values.asOptions(() -> left(solids.shape())).orElse(0.0);
    values.done();
    List<VolumeAnswer.Part> parts = new ArrayList<>();
    for (int i = 0; i < solids.texts().size(); i++) {
      ShapePart part = solids.shape().get(i);
      double one = Volume.ml(part.solid());
      parts.add(new VolumeAnswer.Part(solids.texts().get(i), part.subtract(), one));
    }
    return VolumeAnswer.ofSolids(ml, parts);
  }

  private static double left(List<ShapePart> shape) {
    try {
      return Volume.ml(shape);
    } catch (Faulty nothing) {
      Fault fault = nothing.faults().get(0);
      throw new Faulty(List.of(new Fault(".subtract", fault.found(), fault.right())));
    }
  }

  private VolumeAnswer vessel(Given values) {
    needed(values, "--outer", outer, "the outside of the vessel, a solid");
    needed(values, "--inner", inner, "the inside of the vessel, a solid");
    Optional<Solid> outside = solid(values, "--outer", outer);
    Optional<Solid> inside = solid(values, "--inner", inner);
    Optional<Double> least = values.amount("--least-wall-mm", leastWall, Amount::length);
    values.done();
    Optional<Shell> made =
        values.asOptions(() -> Shell.of(outside.orElseThrow(), inside.orElseThrow()));
    values.done();
    Shell shell = made.orElseThrow();
    mustBeThick(shell, least.orElse(0.0));
    return VolumeAnswer.ofVessel(
        shell.volumeMl(),
        List.of(
            new VolumeAnswer.Part(outer, false, Volume.ml(outside.orElseThrow())),
            new VolumeAnswer.Part(inner, true, Volume.ml(inside.orElseThrow()))),
        shell.wallMm(),
        shell.floorMm());
  }

  private static Optional<Solid> solid(Given values, String option, String text) {
    return text == null ? Optional.empty() : values.within(option, () -> SolidText.read(text));
  }

  private void mustBeThick(Shell shell, double least) {
    // Walls are the difference of two lengths: the last digits are not theirs.
    if (shell.thinnestMm() < least * (1 - 1e-12) - 1e-9) {
      String found = "a wall or floor of " + Math.rint(shell.thinnestMm() * 1000) / 1000 + " mm";
      String right = "at least " + leastWall + " everywhere (--least-wall-mm)";
      throw new Faulty(List.of(new Fault("--inner", found, right)));
    }
  }

  private VolumeAnswer mesh(Given values) {
    Optional<MeshOptions.Scaled> scaled = mesh.read(values);
    values.done();
    StlMesh closed = scaled.orElseThrow().mesh();
    return VolumeAnswer.ofMesh(closed.volumeMl(scaled.orElseThrow().unit()), closed);
  }

  private VolumeAnswer water(Given values) {
    needed(values, "--water-grams", water, "the mass of the water, such as 1180 or 2 lb 10 oz");
    Optional<Double> grams =
        values.amountAboveZero("--water-grams", water, Amount::mass, "a mass above 0");
    Optional<Double> warmth = values.amount("--water-c", waterC, Amount::temperature);
    double celsius = warmth.orElse(WaterFill.USUAL_C);
    Optional<Double> kgPerM3 = values.within("--water-c", () -> WaterFill.densityKgPerM3(celsius));
    values.done();
    return VolumeAnswer.ofWater(WaterFill.ml(grams.orElseThrow(), celsius), kgPerM3.orElseThrow());
  }

  private VolumeAnswer pour(Given values) {
    needed(values, "--poured-grams", poured, "the mass that filled the mould");
    needed(values, "--density", density, "the density of the mix; batch says it for a recipe");
    Optional<Double> grams =
        values.amountAboveZero("--poured-grams", poured, Amount::mass, "a mass above 0");
    Optional<Double> kgPerM3 =
        values
            .amount("--density", density, Amount::density)
            .filter(one -> values.must(Measures.isWet(one), "--density", density, Measures.WET));
    values.done();
    return VolumeAnswer.ofPour(grams.orElseThrow() / kgPerM3.orElseThrow() * 1000);
  }

  private static void needed(Given values, String option, String text, String right) {
    if (text == null) {
      values.fault(new Fault(option, "nothing", right));
    }
  }
}
