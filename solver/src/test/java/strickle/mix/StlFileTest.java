package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import strickle.book.Faulty;
import strickle.book.LengthUnit;

/** How STL files are written by others, and what hostile ones meet. */
class StlFileTest {

  private static final String TEXT =
      new String(Stl.text(Stl.tetrahedron(0, 0, 0)), StandardCharsets.UTF_8);

  private static double ml(String text) {
    return StlMesh.read(Stl.bytes(text)).volumeMl(LengthUnit.MM);
  }

  private static String refusal(String text) {
    return StlMeshTest.refusal(Stl.bytes(text));
  }

  @Test
  void textIsReadHoweverItIsSpaced() {
    double expected = ml(TEXT);
    assertEquals(expected, ml(TEXT.replace("\n", "\r\n")));
    assertEquals(expected, ml(TEXT.replace("\n", "\r")));
    assertEquals(expected, ml(TEXT.replace(" ", "\t")));
    assertEquals(expected, ml("\uFEFF  " + TEXT));
    assertEquals(expected, ml(TEXT.toUpperCase(Locale.ROOT)));
    assertEquals(expected, ml(TEXT.replace(" of several words\n", "\n").stripTrailing()));
    assertEquals(expected, ml(TEXT.replace("1.0", "+1.0E+00").replace("0 0 0", "nan nan nan")));
  }

  @Test
  void solidsOfOneFileAreOneMesh() {
    String other = new String(Stl.text(Stl.tetrahedron(5, 5, 5)), StandardCharsets.UTF_8);
    assertEquals(2 * ml(TEXT), ml(TEXT + other), 1e-15);
  }

  @Test
  void textOutOfPlaceIsToldWithItsLine() {
    assertEquals("\"vortex\" on line 4", refusal(TEXT.replaceFirst("vertex", "vortex")));
    assertEquals(
        "\"one\" on line 5", refusal(TEXT.replaceFirst("vertex 0.0 1.0", "vertex 0.0 one")));
    assertEquals("\"1e+e\" on line 5", refusal(TEXT.replaceFirst("1\\.0", "1e+e")));
    assertEquals("\"endfacet\" on line 7", refusal(TEXT.replaceFirst("  endloop\n", "")));
    assertEquals("\"vertex\" on line 7", refusal(TEXT.replaceFirst("endloop", "vertex 1 1 1")));
    assertEquals("the end of the file on line 30", refusal(TEXT.split("endsolid", -1)[0]));
    assertEquals("\"more\" on line 31", refusal(TEXT + "more"));
  }

  @Test
  void coordinatesThatCannotBeAreToldWithTheirPlace() {
    assertEquals("a coordinate of 1.0E7 in line 5", refusal(TEXT.replaceFirst("1\\.0", "1e7")));
    assertEquals(
        "a coordinate of -Infinity in line 5", refusal(TEXT.replaceFirst("1\\.0", "-1e999")));
    assertEquals("\"NaN\" on line 5", refusal(TEXT.replaceFirst("1\\.0", "NaN")));
    List<double[]> mesh = Stl.tetrahedron(0, 0, 0);
    mesh.get(2)[4] = Double.NaN;
    assertEquals("a coordinate of NaN in triangle 3", StlMeshTest.refusal(Stl.binary(mesh)));
  }

  @Test
  void aFileCutShortIsRefused() {
    byte[] binary = Stl.binary(Stl.tetrahedron(0, 0, 0));
    byte[] text = Stl.text(Stl.tetrahedron(0, 0, 0));
    for (int length = 0; length < binary.length; length++) {
      byte[] cut = Arrays.copyOf(binary, length);
      assertThrows(Faulty.class, () -> StlMesh.read(cut));
    }
    int lastWord = TEXT.lastIndexOf("endsolid") + "endsolid".length();
    for (int length = 0; length < lastWord; length++) {
      byte[] cut = Arrays.copyOf(text, length);
      assertThrows(Faulty.class, () -> StlMesh.read(cut));
    }
  }

  @Test
  void bytesAfterABinaryMeshAreRefused() {
    byte[] binary = Stl.binary(Stl.tetrahedron(0, 0, 0));
    byte[] longer = Arrays.copyOf(binary, binary.length + 1);
    assertTrue(StlMeshTest.refusal(longer).contains("285 bytes"));
  }

  @Test
  void aCountWithoutItsTrianglesTakesNoMemory() {
    ByteBuffer file = ByteBuffer.allocate(84).order(ByteOrder.LITTLE_ENDIAN);
    file.putInt(80, -1);
    assertTrue(StlMeshTest.refusal(file.array()).contains("84 bytes"));
  }

  @Test
  void filesThatAreTooLargeAreRefused() {
    assertTrue(StlMeshTest.refusal(new byte[StlMesh.MOST_BYTES + 1]).contains("67108865 bytes"));
    int triangles = StlMesh.MOST_TRIANGLES + 1;
    ByteBuffer file = ByteBuffer.allocate(84 + 50 * triangles).order(ByteOrder.LITTLE_ENDIAN);
    file.putInt(80, triangles);
    assertEquals("500001 triangles", StlMeshTest.refusal(file.array()));
  }

  @Test
  void anEmptySolidIsRefused() {
    assertEquals("no triangles", refusal("solid nothing\nendsolid nothing\n"));
    assertEquals("no triangles", StlMeshTest.refusal(Stl.binary(List.of())));
  }

  @Test
  void aWordWithoutEndIsRefusedAndNotRepeated() {
    String found = refusal("solid x\n" + "f".repeat(1_000_000));
    assertTrue(found.length() < 100, found);
  }

  @Test
  void randomBytesAreRefusedAndNeverCrash() {
    Random random = new Random(20270405);
    byte[] whole = Stl.text(Stl.cylinder(3, 2, 5));
    for (int i = 0; i < 2000; i++) {
      byte[] file = whole.clone();
      // Anywhere between the name at the start and the name at the end.
      for (int k = 0; k < 3; k++) {
        file[40 + random.nextInt(file.length - 90)] = (byte) random.nextInt(256);
      }
      readOrRefuse(file);
      random.nextBytes(file);
      assertThrows(Faulty.class, () -> StlMesh.read(file));
    }
  }

  /**
   * Spoilt normals and spaces are still a mesh; anything else is a fault and no other exception.
   */
  private static void readOrRefuse(byte[] file) {
    try {
      assertTrue(StlMesh.read(file).volumeMl(LengthUnit.MM) > 0);
    } catch (Faulty refused) {
      assertEquals(1, refused.faults().size());
    }
  }

  @Test
  @Tag("slow")
  void theLargestMeshIsCheckedEdgeByEdge() {
    List<double[]> apart = new ArrayList<>();
    for (int i = 0; i < StlMesh.MOST_TRIANGLES; i++) {
      double at = i;
      apart.add(new double[] {at, at, at, at + 0.25, at, at, at, at + 0.25, at});
    }
    String found = StlMeshTest.refusal(Stl.binary(apart));
    assertTrue(found.contains("open edges: 1500000 of 1500000"), found);
  }
}
