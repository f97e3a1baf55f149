package strickle.json;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
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
  private static final String NAME = "the name of an STL file in the book's folder";

  private final Path folder;
  private final ValueReader<MeshField> object;
  private final Map<MeshFile, Supplier<MeshFile>> measured = new HashMap<>();

  /**
   * A reader of meshes.
   *
   * @param folder where the book lies
   * @param object reads the form with a unit
   */
  MeshReader(Path folder, ValueReader<MeshField> object) {
    this.folder = folder;
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
      MeshFile done = mesh.measured(StlMesh.read(bytes(mesh.file())).volumeMl(mesh.unit()));
      return () -> done;
    } catch (Faulty refusal) {
      return () -> {
        throw refusal;
      };
    }
  }

  private byte[] bytes(String name) {
    Path file = beside(name);
    // A link could lead out of the folder.
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw missing(name);
    }
    return FileBytes.read(file, StlMesh.MOST_BYTES, NAME);
  }

  private Path beside(String name) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException notOfThisSystem) {
      throw missing(name);
    }
  }

  private static Faulty missing(String name) {
    return Findings.refusal(Shown.text(name) + ", which is not a file beside the book", NAME);
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
