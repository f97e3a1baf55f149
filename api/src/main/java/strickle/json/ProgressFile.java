package strickle.json;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import strickle.plan.Plan;
import strickle.plan.learn.Log;
import strickle.plan.learn.Used;
import strickle.plan.replan.Happening;

/** Reads what has happened in a studio ({@code strickle-progress/1}). */
public final class ProgressFile {

  private static final FileFormat FORMAT =
      new FileFormat("strickle-progress/1", "what has happened");

  /** The body of the file. */
  private record Body(List<Happening> happened, List<Used> used) {}

  /** What of it is written. */
  private record Written(List<Happening> happened) {}

  private ProgressFile() {}

  /**
   * Reads what has happened.
   *
   * @param file the file, at most 8 MB of UTF-8
   * @throws strickle.book.Faulty when it is missing, a folder, too large, cannot be read, or is
   *     faulty itself
   */
  public static List<Happening> read(Path file) {
    return parse(text(file));
  }

  private static String text(Path file) {
    return Findings.within(
        JsonPath.ROOT,
        () -> Utf8.text(FileBytes.read(file, Limits.FILE_BYTES, "the path of such a file")));
  }

  /**
   * Makes what has happened of a text.
   *
   * @param json the text of a file
   * @throws strickle.book.Faulty with every fault when anything is wrong with it
   */
  public static List<Happening> parse(String json) {
    return body(json).happened();
  }

  /**
   * Makes a log of such a file: what has happened, and what was really weighed out ({@code used}).
   *
   * @param file as for {@link #read}
   * @param plan the plan it is of
   */
  public static Log log(Path file, Plan plan) {
    Body body = body(text(file));
    return new Log(plan, body.happened(), body.used());
  }

  private static Body body(String json) {
    Findings findings = new Findings();
    RecordReader<Body> reader = new Readers().record(Body.class);
    Optional<Body> body =
        findings.attempt(JsonPath.ROOT, () -> reader.read(FORMAT.body(json, findings)));
    findings.settle();
    return body.orElseThrow();
  }

  /** Writes what has happened, with a newline at the end. */
  public static String write(List<Happening> happened) {
    return FORMAT.text(RecordWriter.object(new Written(happened)));
  }
}
