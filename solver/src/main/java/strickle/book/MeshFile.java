package strickle.book;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * An STL file beside the book that gives a mould's volume.
 *
 * @param file the file's plain name, ending in {@code .stl}: it lies beside the book, so a name
 *     that leads elsewhere is refused
 * @param unit what one unit of the mesh is; STL itself holds none
 * @param measuredMl the volume measured from the mesh, in millilitres, above 0; empty until it has
 *     been measured
 * @param mayCountTwice whether bodies of the mesh may overlap, so that what they share is counted
 *     twice; false until it has been measured
 */
public record MeshFile(
    String file, LengthUnit unit, OptionalDouble measuredMl, boolean mayCountTwice) {

  private static final int LONGEST_NAME = 200;

  /** Throws {@link Faulty} with every fault found. */
  public MeshFile {
    Check check = new Check();
    check.that(
        isPlainName(file),
        ".file",
        Show.text(file),
        "the plain name of a file beside the book, ending in .stl, "
            + "without folders and at most 200 characters");
    check.given(".unit", unit, "mm or inch");
    if (check.given(".measuredMl", measuredMl, "a volume or none")) {
      measuredMl.ifPresent(ml -> check.positive(".measuredMl", ml, Check.MOST_ML_OR_GRAMS));
    }
    check.done();
  }

  /** A mesh of which no bodies overlap, or nobody knows yet. */
  public MeshFile(String file, LengthUnit unit, OptionalDouble measuredMl) {
    this(file, unit, measuredMl, false);
  }

  /** The same file with its volume measured, in millilitres. */
  public MeshFile measured(double ml, boolean twice) {
    return new MeshFile(file, unit, OptionalDouble.of(ml), twice);
  }

  private static boolean isPlainName(String name) {
    return name != null
        && name.length() > ".stl".length()
        && name.length() <= LONGEST_NAME
        && name.toLowerCase(Locale.ROOT).endsWith(".stl")
        && !name.startsWith(".")
        && name.codePoints().noneMatch(MeshFile::leadsElsewhere);
  }

  /** Separators of any system, a drive's colon, and characters that cannot be seen. */
  private static boolean leadsElsewhere(int character) {
    return character == '/'
        || character == '\\'
        || character == ':'
        || Show.isUnprintable(character);
  }
}
