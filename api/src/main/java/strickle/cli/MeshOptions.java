package strickle.cli;

import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import strickle.book.Fault;
import strickle.book.LengthUnit;
import strickle.json.StlFile;
import strickle.mix.StlMesh;

/** The options that give a mesh and what it is measured in. */
final class MeshOptions {

  private static final String MESH = "--mesh";
  private static final String UNIT = "--mesh-unit";
  private static final Map<String, LengthUnit> UNITS =
      Map.of("mm", LengthUnit.MM, "inch", LengthUnit.INCH, "in", LengthUnit.INCH);

  @Option(names = MESH, paramLabel = "FILE", description = "a closed mesh, text or binary STL")
  private String mesh;

  @Option(
      names = UNIT,
      paramLabel = "UNIT",
      description = "what one unit of the mesh is, mm or inch: STL itself does not say")
  private String unit;

  /** A mesh and what one unit of it is. */
  record Scaled(StlMesh mesh, LengthUnit unit) {}

  /** Whether any of them was given. */
  boolean given() {
    return mesh != null || unit != null;
  }

  /** The mesh; empty when anything is wrong, which is noted. */
  Optional<Scaled> read(Given values) {
    if (mesh == null) {
      values.fault(new Fault(MESH, "nothing", "an STL file"));
    }
    Optional<LengthUnit> scale = unit(values);
    Optional<StlMesh> read =
        mesh == null
            ? Optional.empty()
            : values
                .within("", () -> Paths.ofFile(MESH, mesh, "the path of an STL file"))
                .flatMap(path -> values.within(MESH, () -> StlFile.read(path)));
    return read.flatMap(closed -> scale.map(one -> new Scaled(closed, one)));
  }

  private Optional<LengthUnit> unit(Given values) {
    Optional<LengthUnit> scale = Optional.ofNullable(unit).map(UNITS::get);
    if (scale.isEmpty()) {
      String found = unit == null ? "nothing" : '"' + unit + '"';
      values.fault(new Fault(UNIT, found, "mm or inch: an STL file does not say what it is in"));
    }
    return scale;
  }
}
