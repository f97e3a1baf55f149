package strickle.json;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import strickle.plan.replan.Happening;

/** Reads what has happened in a studio ({@code strickle-progress/1}). */
public final class ProgressFile {

  private static final FileFormat FORMAT =
      new FileFormat("strickle-progress/1", "what has happened");

  /** The body of the file. */
  private record Body(List<Happening> happened) {}

  private ProgressFile() {}

  /**
   * Reads what has happened.
   *
   * @param file the file, at most 8 MB of UTF-8
   * @throws strickle.book.Faulty when it is missing, a folder, too large, cannot be read, or is
   *     faulty itself
   */
  public static List<Happening> read(Path file) {
    String text =
        Findings.within(
            JsonPath.ROOT,
            () -> Utf8.text(FileBytes.read(file, Limits.FILE_BYTES, "the path of such a file")));
    return parse(text);
  }

  /**
   * Makes what has happened of a text.
   *
   * @param json the text of a file
   * @throws strickle.book.Faulty with every fault when anything is wrong with it
   */
  public static List<Happening> parse(String json) {
    Findings findings = new Findings();
    RecordReader<Body> reader = new Readers().record(Body.class);
    Optional<Body> body =
        findings.attempt(JsonPath.ROOT, () -> reader.read(FORMAT.body(json, findings)));
    findings.settle();
    return body.orElseThrow().happened();
  }

  /** Writes what has happened, with a newline at the end. */
  public static String write(List<Happening> happened) {
    return FORMAT.text(RecordWriter.object(new Body(happened)));
  }
}
