package strickle.json;

import java.nio.file.Path;
import strickle.mix.StlMesh;

/** Reads STL files that are named on a command line. */
public final class StlFile {

  private StlFile() {}

  /**
   * Reads a closed mesh.
   *
   * @throws strickle.book.Faulty with an empty path when the file is missing, cannot be read, is no
   *     STL file, or holds a mesh that is not closed, with the number of its open edges
   */
  public static StlMesh read(Path file) {
    return StlMesh.read(FileBytes.read(file, StlMesh.MOST_BYTES, "an STL file"));
  }
}
