package strickle.json;

import strickle.price.fair.FairBuild;

/** Writes what to bring to a fair ({@code strickle-fair/1}). */
public final class FairFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-fair/1", "a fair's build");

  private FairFile() {}

  /** Writes a build, with a newline at the end. */
  public static String write(FairBuild build) {
    return FORMAT.text(RecordWriter.object(build));
  }
}
