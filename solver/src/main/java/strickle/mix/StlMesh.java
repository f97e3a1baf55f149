package strickle.mix;

import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;

/**
 * A closed mesh of triangles read from an STL file. Only a closed mesh has a volume: a missing face
 * can leave a plausible wrong figure, so an open mesh is refused here and never measured.
 */
public final class StlMesh {

  /** The largest file read, in bytes. */
  public static final int MOST_BYTES = 64 * 1024 * 1024;

  /** The most triangles read; enough for a scan, and few enough to check in a moment. */
  public static final int MOST_TRIANGLES = 500_000;

  /** Coordinates run from minus this to this, in the mesh's own unit. */
  public static final double FARTHEST = 1e6;

  private static final int PER_TRIANGLE = 9;
  private static final double MM3_PER_ML = 1000;

  private final double cubicUnits;
  private final double squareUnits;
  private final int triangles;

  private StlMesh(double cubicUnits, double squareUnits, int triangles) {
    this.cubicUnits = cubicUnits;
    this.squareUnits = squareUnits;
    this.triangles = triangles;
  }

  /**
   * Reads an STL file, text or binary (told apart by their content, not by the word they start
   * with).
   *
   * @throws Faulty with an empty path when the file is too large, is not STL, holds no triangles or
   *     too many, holds an impossible coordinate, encloses nothing, or is not closed: every edge
   *     has to be used exactly twice, in opposite directions; the fault tells how many are not
   */
  public static StlMesh read(byte[] file) {
    if (file.length > MOST_BYTES) {
      throw refused(file.length + " bytes", "an STL file of at most " + MOST_BYTES + " bytes");
    }
    double[] corners = StlBinary.matches(file) ? StlBinary.read(file) : StlText.read(file);
    int triangles = corners.length / PER_TRIANGLE;
    if (triangles == 0) {
      throw refused("no triangles", "an STL file with a closed mesh");
    }
    refuseOpen(corners);
    double volume = Math.abs(signedVolume(corners));
    if (!(volume > 0)) {
      throw refused("a flat mesh that encloses nothing", "a closed mesh with a volume above 0");
    }
    return new StlMesh(volume, StlArea.of(corners), triangles);
  }

  /**
   * The volume inside the mesh in millilitres, above 0, one unit of the file being {@code unit}.
   */
  public double volumeMl(LengthUnit unit) {
    return cubicUnits * unit.mm() * unit.mm() * unit.mm() / MM3_PER_ML;
  }

  /** The surface of the mesh in mm², above 0, one unit of the file being {@code unit}. */
  public double areaMm2(LengthUnit unit) {
    return squareUnits * unit.mm() * unit.mm();
  }

  /** How many triangles the file holds. */
  public int triangles() {
    return triangles;
  }

  /** A fault of the whole file; who reads it puts the path of the file in front. */
  static Faulty refused(String found, String right) {
    return new Faulty(List.of(new Fault("", found, right)));
  }

  private static void refuseOpen(double[] corners) {
    Edges edges = Edges.of(corners);
    if (edges.open() > 0) {
      throw refused(
          "a mesh that is not closed (open edges: " + edges.open() + " of " + edges.all() + ")",
          "a closed mesh, every edge shared by exactly two faces wound the same way round; "
              + "close its holes, or measure it another way, as by the water that fills it");
    }
  }

  /**
   * One sixth of Σ a·(b×c) over the faces (divergence theorem), seen from the mesh's first corner:
   * far from the origin the products would lose their last digits.
   */
  private static double signedVolume(double[] corners) {
    double sum = 0;
    for (int i = 0; i < corners.length; i += PER_TRIANGLE) {
      double ax = corners[i] - corners[0];
      double ay = corners[i + 1] - corners[1];
      double az = corners[i + 2] - corners[2];
      double bx = corners[i + 3] - corners[0];
      double by = corners[i + 4] - corners[1];
      double bz = corners[i + 5] - corners[2];
      double cx = corners[i + 6] - corners[0];
      double cy = corners[i + 7] - corners[1];
      double cz = corners[i + 8] - corners[2];
      sum += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }
    return sum / 6;
  }
}
