package strickle.json;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import strickle.book.Faulty;
import strickle.mix.StlMesh;

/** Where the STL files lie that moulds name as their mesh. */
@FunctionalInterface
public interface Meshes {

  /** What a mesh's name should be. */
  String RIGHT = "the name of an STL file in the book's folder";

  /**
   * The bytes of a file.
   *
   * @param name its plain name, without a folder
   * @throws Faulty with an empty path when there is no such file, or it cannot be read
   */
  byte[] bytes(String name);

  /** The files of a folder; links in it are not followed. */
  static Meshes in(Path folder) {
    return name -> {
      Path file = beside(folder, name);
      // A link could lead out of the folder.
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        throw missing(name);
      }
      return FileBytes.read(file, StlMesh.MOST_BYTES, RIGHT);
    };
  }

  /** The refusal of a file that is not there. */
  static Faulty missing(String name) {
    return Findings.refusal(Shown.text(name) + ", which is not a file beside the book", RIGHT);
  }

  private static Path beside(Path folder, String name) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException notOfThisSystem) {
      throw missing(name);
    }
  }
}
