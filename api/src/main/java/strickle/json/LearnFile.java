package strickle.json;

import strickle.json.contract.Shape;
import strickle.plan.learn.Lessons;

/** Writes what records say of a book ({@code strickle-lessons/1}). */
public final class LearnFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-lessons/1", "lessons");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(Lessons.class, FORMAT.name());

  private LearnFile() {}

  /** Writes lessons, with a newline at the end. */
  public static String write(Lessons lessons) {
    return FORMAT.text(RecordWriter.object(lessons));
  }
}
