package strickle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Amount;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.ShapePart;
import strickle.json.StlFile;
import strickle.mix.Surface;

/** The area that is coated, given or read off solids or a mesh, one of them at a time. */
final class CoatArea {

  private static final double MM2_PER_M2 = 1e6;
  private static final String WAYS = "one of --area-m2, --add and --mesh";
  private static final Map<String, LengthUnit> UNITS =
      Map.of("mm", LengthUnit.MM, "inch", LengthUnit.INCH);

  @Option(
      names = "--area-m2",
      paramLabel = "AREA",
      description = "the area of one piece, such as 0.05, 480cm2 or 3ft2")
  private String area;

  @Option(
      names = "--add",
      paramLabel = "SOLID",
      description = "a solid all round, as volume knows them; may be given several times")
  private List<String> add = new ArrayList<>();

  @Option(
      names = "--subtract",
      paramLabel = "SOLID",
      description = {
        "a hollow open at its top (a cap or half a sphere at its flat face), whose walls are coated"
            + " too; may be given several times"
      })
  private List<String> subtract = new ArrayList<>();

  @Option(names = "--mesh", paramLabel = "FILE", description = "a closed mesh, text or binary STL")
  private String mesh;

  @Option(
      names = "--mesh-unit",
      paramLabel = "UNIT",
      description = "what one unit of the mesh is, mm or inch: STL itself does not say")
  private String meshUnit;

  /**
   * The area in m²; what is wrong is noted.
   *
   * @throws Faulty when it is given in no way or in several
   */
  Optional<Double> read(Given values) {
    boolean solids = !add.isEmpty() || !subtract.isEmpty();
    boolean meshed = mesh != null || meshUnit != null;
    int ways = (area == null ? 0 : 1) + (solids ? 1 : 0) + (meshed ? 1 : 0);
    if (ways != 1) {
      String found = ways == 0 ? "no area" : "several areas at once";
      throw new Faulty(List.of(new Fault("coat", found, WAYS)));
    }
    if (area != null) {
      return values.amountAboveZero("--area-m2", area, Amount::area, "an area above 0");
    }
    return solids ? solids(values) : mesh(values);
  }

  private Optional<Double> solids(Given values) {
    List<ShapePart> shape = new ArrayList<>();
    add.forEach(text -> part(values, "--add", text, false, shape));
    subtract.forEach(text -> part(values, "--subtract", text, true, shape));
    if (shape.size() < add.size() + subtract.size()) {
      return Optional.empty();
    }
    return values.within("--add, --subtract", () -> Surface.mm2(shape) / MM2_PER_M2);
  }

  private static void part(
      Given values, String option, String text, boolean hollow, List<ShapePart> shape) {
    values
        .within(option + " " + text, () -> SolidText.read(text))
        .ifPresent(solid -> shape.add(new ShapePart(solid, hollow)));
  }

  private Optional<Double> mesh(Given values) {
    List<Fault> missing = new ArrayList<>();
    if (mesh == null) {
      missing.add(new Fault("--mesh", "nothing", "an STL file"));
    }
    if (meshUnit == null || !UNITS.containsKey(meshUnit)) {
      String found = meshUnit == null ? "nothing" : '"' + meshUnit + '"';
      missing.add(new Fault("--mesh-unit", found, "mm or inch: an STL file does not say"));
    }
    if (!missing.isEmpty()) {
      throw new Faulty(missing);
    }
    Path file = Paths.of("--mesh", mesh, "the path of an STL file");
    return values.within(
        "--mesh", () -> StlFile.read(file).areaMm2(UNITS.get(meshUnit)) / MM2_PER_M2);
  }
}
