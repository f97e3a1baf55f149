package strickle.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.MeshFile;

class MeshTest {

  private static final String A = "0 0 0";
  private static final String B = "60 0 0";
  private static final String C = "0 60 0";
  private static final String D = "0 0 100";

  // Three edges of 60, 60 and 100 at right angles: a sixth of the box, 60 000 cubic units.
  private static final double ML_IN_MM = 60;
  private static final double ML_IN_INCHES = 60 * 25.4 * 25.4 * 25.4;

  @TempDir Path folder;

  @BeforeEach
  void putTheMeshBesideTheBook() throws IOException {
    write("bowl.stl", face(A, C, B) + face(A, B, D) + face(A, D, C) + face(B, C, D));
    write("open.stl", face(A, C, B) + face(A, B, D) + face(A, D, C));
  }

  @Test
  void aMeshIsNamedByItsFileAndMeasured() {
    MeshFile mesh = mesh("\"bowl.stl\"");
    assertEquals("bowl.stl", mesh.file());
    assertEquals(LengthUnit.MM, mesh.unit());
    assertEquals(ML_IN_MM, mesh.measuredMl().getAsDouble(), 1e-9);
  }

  @Test
  void aMeshMayBeInInches() {
    MeshFile mesh = mesh("{\"file\": \"bowl.stl\", \"unit\": \"inch\"}");
    assertEquals(LengthUnit.INCH, mesh.unit());
    assertEquals(ML_IN_INCHES, mesh.measuredMl().getAsDouble(), 1e-6);
  }

  @Test
  void aMeshWithoutUnitIsInMillimetres() {
    assertEquals(mesh("\"bowl.stl\""), mesh("{\"file\": \"bowl.stl\"}"));
  }

  @Test
  void meshesAreWrittenWithoutTheirVolume() {
    String plain = BookFile.write(book("\"bowl.stl\""));
    assertTrue(plain.contains("\"mesh\": \"bowl.stl\",\n"), plain);
    String inches = BookFile.write(book("{\"file\": \"bowl.stl\", \"unit\": \"inch\"}"));
    assertTrue(
        inches.contains("\"mesh\": {\"file\": \"bowl.stl\", \"unit\": \"inch\"},\n"), inches);
  }

  @Test
  void booksWithMeshesWrittenAndReadAgainAreEqual() {
    for (String mesh : List.of("\"bowl.stl\"", "{\"file\": \"bowl.stl\", \"unit\": \"inch\"}")) {
      Book book = book(mesh);
      assertEquals(book, BookFile.parse(BookFile.write(book), Meshes.in(folder)));
    }
  }

  @Test
  void meshesLieBesideTheFileOfTheBook() throws IOException {
    Path file = Files.writeString(folder.resolve("book.json"), json("\"bowl.stl\""));
    assertEquals(
        OptionalDouble.of(ML_IN_MM), BookFile.read(file).moulds().get(0).mesh().get().measuredMl());
  }

  @Test
  void missingMeshesAreFaults() {
    assertEquals(
        "$.moulds[0].mesh: found \"cup.stl\", which is not a file beside the book;"
            + " right would be the name of an STL file in the book's folder",
        fault("\"cup.stl\""));
    assertEquals("$.moulds[0].mesh.file", path("{\"file\": \"cup.stl\"}"));
    assertEquals("$.moulds[0].mesh.file", path("{\"unit\": \"mm\"}"));
  }

  @Test
  void openMeshesAreFaults() {
    assertEquals("$.moulds[0].mesh", path("\"open.stl\""));
    assertEquals("$.moulds[0].mesh.file", path("{\"file\": \"open.stl\", \"unit\": \"mm\"}"));
  }

  @Test
  void filesThatAreNoMeshAreFaults() throws IOException {
    Files.writeString(folder.resolve("note.stl"), "not a mesh");
    assertEquals("$.moulds[0].mesh", path("\"note.stl\""));
  }

  @Test
  void noPathLeavesTheFolder() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("inside"));
    for (String name :
        List.of(
            "../bowl.stl",
            folder.resolve("bowl.stl").toString(),
            "..",
            ".",
            "inside/../../bowl.stl",
            "..\\\\bowl.stl",
            "C:bowl.stl",
            "bowl.stl\\u0000",
            "\\ud800.stl")) {
      String json = json('"' + name + '"');
      List<Fault> faults =
          assertThrows(Faulty.class, () -> BookFile.parse(json, Meshes.in(inside)), name).faults();
      assertEquals(List.of("$.moulds[0].mesh"), faults.stream().map(Fault::path).toList(), name);
    }
  }

  @Test
  void linksAreNotFollowed() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("inside"));
    try {
      Files.createSymbolicLink(inside.resolve("bowl.stl"), folder.resolve("bowl.stl"));
    } catch (UnsupportedOperationException noLinks) {
      assumeTrue(false, "this system has no links");
    }
    String json = json("\"bowl.stl\"");
    assertThrows(Faulty.class, () -> BookFile.parse(json, Meshes.in(inside)));
  }

  @Test
  void meshesOfTheWrongKindOrWithUnknownFieldsAreFaults() {
    assertEquals(
        "$.moulds[0].mesh: found 5; right would be the name of an STL file beside the book such as"
            + " \"bowl.stl\", or {\"file\": \"bowl.stl\", \"unit\": \"inch\"}",
        fault("5"));
    assertEquals(
        "$.moulds[0].mesh.unit: found \"cm\"; right would be \"mm\"",
        fault("{\"file\": \"bowl.stl\", \"unit\": \"cm\"}"));
    assertEquals(
        "$.moulds[0].mesh.measuredMl: found the unknown field \"measuredMl\";"
            + " right would be one of file, unit",
        fault("{\"file\": \"bowl.stl\", \"measuredMl\": 5}"));
  }

  private MeshFile mesh(String mesh) {
    return book(mesh).moulds().get(0).mesh().orElseThrow();
  }

  private Book book(String mesh) {
    return BookFile.parse(json(mesh), Meshes.in(folder));
  }

  private String fault(String mesh) {
    String json = json(mesh);
    List<Fault> faults =
        assertThrows(Faulty.class, () -> BookFile.parse(json, Meshes.in(folder))).faults();
    assertEquals(1, faults.size(), faults.toString());
    return faults.get(0).toString();
  }

  private String path(String mesh) {
    String fault = fault(mesh);
    return fault.substring(0, fault.indexOf(':'));
  }

  private static String json(String mesh) {
    return ExampleBook.with("\"volumeMl\": 1180", "\"mesh\": " + mesh);
  }

  private void write(String name, String faces) throws IOException {
    Files.writeString(folder.resolve(name), "solid t\n" + faces + "endsolid t\n");
  }

  private static String face(String one, String two, String three) {
    return "facet normal 0 0 0\nouter loop\nvertex "
        + String.join("\nvertex ", one, two, three)
        + "\nendloop\nendfacet\n";
  }
}
