package strickle.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;

/** Volumes of closed meshes, and what is refused as not closed. */
class StlMeshTest {

  /** Unit corner tetrahedron: 0.1667 (1/6) as read in the documentation of matgeom (Octave). */
  private static final double SIXTH_OF_A_MM3 = 1.0 / 6 / 1000;

  private static double ml(List<double[]> triangles) {
    return StlMesh.read(Stl.text(triangles)).volumeMl(LengthUnit.MM);
  }

  @Test
  void theUnitTetrahedronHoldsASixth() {
    assertEquals(SIXTH_OF_A_MM3, ml(Stl.tetrahedron(0, 0, 0)), 1e-15);
  }

  @Test
  void aMeshHoldsTheSameWhereverItLies() {
    // Derived: shifted by (10, −7, 3) still 1/6; the last lies as far out as a mesh may.
    assertEquals(SIXTH_OF_A_MM3, ml(Stl.tetrahedron(10, -7, 3)), 1e-15);
    assertEquals(SIXTH_OF_A_MM3, ml(Stl.tetrahedron(999_000, -999_000, 999_000)), 1e-15);
  }

  @Test
  void textAndBinaryHoldTheSame() {
    byte[] binary = Stl.binary(Stl.tetrahedron(10, -7, 3));
    assertEquals(SIXTH_OF_A_MM3, StlMesh.read(binary).volumeMl(LengthUnit.MM), 1e-15);
    assertEquals(4, StlMesh.read(binary).triangles());
  }

  @Test
  void binaryThatBeginsWithTheWordOfTextIsReadAsBinary() {
    byte[] binary = Stl.binary("solid exported", Stl.tetrahedron(0, 0, 0));
    assertEquals(SIXTH_OF_A_MM3, StlMesh.read(binary).volumeMl(LengthUnit.MM), 1e-15);
  }

  @Test
  void anInsideOutMeshHoldsTheSame() {
    List<double[]> inward = Stl.tetrahedron(10, -7, 3).stream().map(Stl::flipped).toList();
    assertEquals(SIXTH_OF_A_MM3, ml(inward), 1e-15);
  }

  @Test
  void anInchIsCountedAsItsMillimetres() {
    // 1 in = 25.4 mm exactly (16 CFR 500.19): 16387.064 mm³ to the cubic inch.
    StlMesh mesh = StlMesh.read(Stl.text(Stl.tetrahedron(0, 0, 0)));
    assertEquals(16.387064 / 6, mesh.volumeMl(LengthUnit.INCH), 1e-12);
  }

  @Test
  void aCylinderOfFlatSidesHoldsLessByTheKnownRatio() {
    // Derived: (n/2π) sin(2π/n) of the true cylinder.
    assertRatio(0.95493, 12);
    assertRatio(0.98862, 24);
    assertRatio(0.99715, 48);
    assertRatio(0.99929, 96);
    assertRatio(0.99995, 360);
  }

  private static void assertRatio(double ratio, int sides) {
    double whole = Math.PI * 50 * 50 * 100 / 1000;
    List<double[]> mesh = Stl.cylinder(50, 100, sides);
    assertEquals(ratio, ml(mesh) / whole, 5e-6);
    double inFloats = StlMesh.read(Stl.binary(mesh)).volumeMl(LengthUnit.MM);
    assertEquals(ratio, inFloats / whole, 6e-6);
  }

  @Test
  void aMissingFaceIsRefusedWhereverTheOriginLies() {
    // Derived: with one face dropped the sum is 1/6 unshifted, which looks right, and 4/6 shifted.
    for (int missing = 0; missing < 4; missing++) {
      for (int shift = 0; shift < 2; shift++) {
        List<double[]> open = Stl.tetrahedron(10 * shift, -7 * shift, 3 * shift);
        open.remove(missing);
        assertTrue(refusal(Stl.text(open)).contains("open edges: 3 of 6"));
      }
    }
  }

  @Test
  void aFlippedFaceIsRefused() {
    List<double[]> mesh = Stl.tetrahedron(0, 0, 0);
    mesh.set(2, Stl.flipped(mesh.get(2)));
    assertTrue(refusal(Stl.text(mesh)).contains("open edges: 3 of 6"));
  }

  @Test
  void aFaceGivenTwiceIsRefused() {
    List<double[]> mesh = Stl.tetrahedron(0, 0, 0);
    mesh.add(mesh.get(0));
    assertTrue(refusal(Stl.text(mesh)).contains("open edges: 3 of 6"));
  }

  @Test
  void anEdgeSharedByFourFacesIsRefused() {
    List<double[]> mesh = Stl.tetrahedron(0, 0, 0);
    // A second tetrahedron on the other side of the first one's edge along z.
    Stl.tetrahedron(0, 0, 0).forEach(t -> mesh.add(turnedAboutZ(t)));
    assertEquals(
        "a mesh in which more than two faces meet at an edge (such edges: 1 of 11)",
        refusal(Stl.text(mesh)));
  }

  @Test
  void bodiesAreCountedAndThoseApartAddUp() {
    StlMesh one = StlMesh.read(Stl.text(Stl.tetrahedron(0, 0, 0)));
    assertEquals(1, one.bodies());
    assertFalse(one.mayCountTwice());
    StlMesh two = StlMesh.read(Stl.text(with(Stl.tetrahedron(5, 0, 0))));
    assertEquals(2, two.bodies());
    assertEquals(2 * SIXTH_OF_A_MM3, two.volumeMl(LengthUnit.MM), 1e-15);
    assertFalse(two.mayCountTwice());
  }

  @Test
  void bodiesThatMayShareRoomAreTold() {
    StlMesh two = StlMesh.read(Stl.text(with(Stl.tetrahedron(0.25, 0.125, 0.125))));
    assertEquals(2, two.bodies());
    assertTrue(two.mayCountTwice());
  }

  @Test
  void aBodyInsideOutBesideAnotherIsRefusedWhereverItStands() {
    List<double[]> inward = Stl.tetrahedron(5, 0, 0).stream().map(Stl::flipped).toList();
    assertTrue(refusal(Stl.text(with(scaled(inward, 2)))).startsWith("1 of 2 bodies inside out"));
    assertTrue(refusal(Stl.text(with(scaled(inward, 0.5)))).startsWith("1 of 2 bodies inside out"));
  }

  @Test
  void aHollowWoundInwardIsTakenAway() {
    List<double[]> hollow =
        scaled(Stl.tetrahedron(0.25, 0.25, 0.25).stream().map(Stl::flipped).toList(), 0.5);
    StlMesh mesh = StlMesh.read(Stl.text(with(hollow)));
    assertEquals(2, mesh.bodies());
    assertEquals(SIXTH_OF_A_MM3 * (1 - 0.125), mesh.volumeMl(LengthUnit.MM), 1e-15);
    assertFalse(mesh.mayCountTwice());
  }

  private static List<double[]> with(List<double[]> other) {
    List<double[]> mesh = Stl.tetrahedron(0, 0, 0);
    mesh.addAll(other);
    return mesh;
  }

  private static List<double[]> scaled(List<double[]> mesh, double by) {
    return mesh.stream().map(t -> Arrays.stream(t).map(x -> x * by).toArray()).toList();
  }

  private static double[] turnedAboutZ(double[] t) {
    return new double[] {-t[0], -t[1], t[2], -t[3], -t[4], t[5], -t[6], -t[7], t[8]};
  }

  @Test
  void aFaceShrunkToALineNeitherOpensNorFillsAMesh() {
    List<double[]> mesh = Stl.tetrahedron(0, 0, 0);
    mesh.add(Stl.triangle(new double[] {1, 0, 0}, new double[] {0, 1, 0}, new double[] {1, 0, 0}));
    assertEquals(SIXTH_OF_A_MM3, ml(mesh), 1e-15);
  }

  @Test
  void minusZeroIsTheSamePlaceAsZero() {
    List<double[]> mesh = Stl.tetrahedron(0, 0, 0);
    mesh.get(0)[0] = -0.0;
    assertEquals(SIXTH_OF_A_MM3, ml(mesh), 1e-15);
  }

  @Test
  void aFlatMeshIsRefused() {
    double[] face = Stl.tetrahedron(0, 0, 0).get(0);
    assertTrue(refusal(Stl.text(List.of(face, Stl.flipped(face)))).contains("flat"));
  }

  /** What a refused file is told, which is one fault of the file as a whole. */
  static String refusal(byte[] file) {
    List<Fault> faults = assertThrows(Faulty.class, () -> StlMesh.read(file)).faults();
    assertEquals(1, faults.size());
    assertEquals("", faults.get(0).path());
    return faults.get(0).found();
  }
}
