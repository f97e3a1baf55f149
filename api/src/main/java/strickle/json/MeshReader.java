package strickle.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.MeshFile;
import strickle.mix.StlMesh;
import tools.jackson.databind.JsonNode;

/**
 * Reads a mould's mesh: the name of an STL file beside the book, or an object with the name and the
 * unit. The file is measured at once; a mesh that has no volume is a fault of the book.
 */
final class MeshReader implements ValueReader<MeshFile> {

  private static final String FILE = ".file";

  private final Meshes files;
  private final ValueReader<MeshField> object;
  private final Map<MeshFile, Supplier<MeshFile>> measured = new HashMap<>();

  /**
   * A reader of meshes.
   *
   * @param files where the files lie
   * @param object reads the form with a unit
   */
  MeshReader(Meshes files, ValueReader<MeshField> object) {
    this.files = files;
    this.object = object;
  }

  @Override
  public MeshFile read(JsonNode node) {
    if (node.isString()) {
      return at("", () -> measured(new MeshField(node.stringValue(), LengthUnit.MM)));
    }
    if (node.isObject()) {
      MeshField field = object.read(node);
      return at(FILE, () -> measured(field));
    }
    throw Findings.refusal(Shown.of(node), right());
  }

  @Override
  public String right() {
    return "the name of an STL file beside the book such as \"bowl.stl\","
        + " or {\"file\": \"bowl.stl\", \"unit\": \"inch\"}";
  }

  private MeshFile measured(MeshField field) {
    MeshFile mesh = new MeshFile(field.file(), field.unit(), OptionalDouble.empty());
    return measured.computeIfAbsent(mesh, this::outcome).get();
  }

  // Kept also when it is a refusal: many moulds may name the same large file.
  private Supplier<MeshFile> outcome(MeshFile mesh) {
    try {
      StlMesh read = StlMesh.read(files.bytes(mesh.file()));
      MeshFile done = mesh.measured(read.volumeMl(mesh.unit()), read.mayCountTwice());
      return () -> done;
    } catch (Faulty refusal) {
      return () -> {
        throw refusal;
      };
    }
  }

  // Whatever is wrong with the file, the book's own place for it is its name.
  private static MeshFile at(String path, Supplier<MeshFile> part) {
    try {
      return part.get();
    } catch (Faulty faulty) {
      List<Fault> faults =
          faulty.faults().stream()
              .map(fault -> new Fault(path, fault.found(), fault.right()))
              .toList();
      throw new Faulty(faults);
    }
  }
}
