package strickle.json;

import java.nio.file.Path;
import java.util.Optional;
import strickle.json.contract.Shape;
import strickle.plan.Plan;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads and writes plans ({@code strickle-plan/1}). Every time carries its offset and has no
 * seconds; the lot of a demould or step is the lot of its run and is not written.
 */
public final class PlanFile {

  private static final FileFormat FORMAT = new FileFormat("strickle-plan/1", "a plan");

  /** What it looks like. */
  public static final Shape SHAPE = new Shape.Of(Plan.class, FORMAT.name());

  private PlanFile() {}

  /**
   * Reads a plan.
   *
   * @param file the file, at most 8 MB of UTF-8
   * @throws strickle.book.Faulty when it is missing, a folder, too large, cannot be read, or is
   *     faulty itself
   */
  public static Plan read(Path file) {
    String text =
        Findings.within(
            JsonPath.ROOT,
            () -> Utf8.text(FileBytes.read(file, Limits.FILE_BYTES, "the path of a plan")));
    return parse(text);
  }

  /**
   * Makes a plan of a text.
   *
   * @param json the text of a file
   * @throws strickle.book.Faulty with every fault when anything is wrong with it
   */
  public static Plan parse(String json) {
    Findings findings = new Findings();
    RecordReader<Plan> reader = new Readers().record(Plan.class);
    Optional<Plan> plan =
        findings.attempt(
            JsonPath.ROOT,
            () -> {
              ObjectNode body = FORMAT.body(json, findings);
              TaskLots.add(body, findings);
              return reader.read(body);
            });
    findings.settle();
    return plan.orElseThrow();
  }

  /** Writes a plan, with a newline at the end. */
  public static String write(Plan plan) {
    return FORMAT.text(tree(plan));
  }

  /** The tree of a plan, without its format. */
  static ObjectNode tree(Plan plan) {
    ObjectNode body = RecordWriter.object(plan);
    TaskLots.remove(body);
    ObjectNode totals = (ObjectNode) body.get("totals");
    totals.put("weightedLateHours", RecordWriter.plain(plan.totals().weightedLateHours()));
    return body;
  }
}
