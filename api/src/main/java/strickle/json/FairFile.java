package strickle.json;

import strickle.json.contract.Shape;
import strickle.price.fair.FairBuild;

/** Writes what to bring to a fair ({@code strickle-fair/1}). */
public final class FairFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-fair/1", "a fair's build");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(FairBuild.class, FORMAT.name());

  private FairFile() {}

  /** Writes a build, with a newline at the end. */
  public static String write(FairBuild build) {
    return FORMAT.text(RecordWriter.object(build));
  }
}
