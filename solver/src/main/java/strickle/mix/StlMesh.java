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
  private final List<Bodies.Body> bodies;

  private StlMesh(List<Bodies.Body> bodies, double squareUnits, int triangles) {
    this.cubicUnits = Math.abs(bodies.stream().mapToDouble(Bodies.Body::cubicUnits).sum());
    this.squareUnits = squareUnits;
    this.triangles = triangles;
    this.bodies = List.copyOf(bodies);
  }

  /**
   * Reads an STL file, text or binary (told apart by their content, not by the word they start
   * with).
   *
   * @throws Faulty with an empty path when the file is too large, is not STL, holds no triangles or
   *     too many, holds an impossible coordinate, encloses nothing, or is not closed: every edge
   *     has to be used exactly twice, in opposite directions; the fault tells how many are not; or
   *     when one of its bodies is inside out and no hollow of another
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
    List<Bodies.Body> bodies = closed(corners).of(corners);
    StlMesh mesh = new StlMesh(bodies, StlArea.of(corners), triangles);
    if (!(mesh.cubicUnits > 0)) {
      throw refused("a flat mesh that encloses nothing", "a closed mesh with a volume above 0");
    }
    mesh.refuseInsideOut();
    return mesh;
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

  /** How many bodies it is of; a hollow shut off in a body is one of its own. */
  public int bodies() {
    return bodies.size();
  }

  /**
   * Whether two bodies wound the same way may share room, by the boxes around them: what they share
   * is counted twice.
   */
  public boolean mayCountTwice() {
    for (int i = 0; i < bodies.size(); i++) {
      Bodies.Body one = bodies.get(i);
      if (bodies.subList(0, i).stream().anyMatch(o -> alike(one, o) && one.boxMeets(o))) {
        return true;
      }
    }
    return false;
  }

  // A body wound the other way is a hollow, and lies in another.
  private void refuseInsideOut() {
    double sum = bodies.stream().mapToDouble(Bodies.Body::cubicUnits).sum();
    List<Bodies.Body> solid = bodies.stream().filter(b -> b.cubicUnits() * sum > 0).toList();
    long odd =
        bodies.stream()
            .filter(body -> body.cubicUnits() * sum < 0)
            .filter(body -> solid.stream().noneMatch(other -> other.boxHolds(body)))
            .count();
    if (odd > 0) {
      throw refused(
          odd + " of " + bodies.size() + " bodies inside out, beside the others",
          "bodies whose faces are all wound outward; only a hollow within another is wound inward");
    }
  }

  private static boolean alike(Bodies.Body one, Bodies.Body other) {
    return one.cubicUnits() * other.cubicUnits() > 0;
  }

  /** A fault of the whole file; who reads it puts the path of the file in front. */
  static Faulty refused(String found, String right) {
    return new Faulty(List.of(new Fault("", found, right)));
  }

  private static Bodies closed(double[] corners) {
    Edges edges = Edges.of(corners);
    if (edges.open() > 0) {
      throw refused(
          "a mesh that is not closed (open edges: " + edges.open() + " of " + edges.all() + ")",
          "a closed mesh, every edge shared by exactly two faces wound the same way round; "
              + "close its holes, or measure it another way, as by the water that fills it");
    }
    if (edges.crowded() > 0) {
      throw refused(
          "a mesh in which more than two faces meet at an edge (such edges: "
              + edges.crowded()
              + " of "
              + edges.all()
              + ")",
          "every face once, and bodies that do not touch along an edge: join them, or move them"
              + " apart by a hair");
    }
    return edges.bodies();
  }
}
