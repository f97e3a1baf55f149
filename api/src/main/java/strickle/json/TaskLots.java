package strickle.json;

import java.util.HashMap;
import java.util.Map;
import strickle.book.Fault;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plan's file names the lot only where it is poured, as a run already belongs to one lot; the
 * program's tasks all know their lot. This puts it in and takes it out.
 */
final class TaskLots {

  private static final String TASKS = "tasks";
  private static final String LOT = "lot";
  private static final String RUN = "run";
  private static final String ID = "id";

  private TaskLots() {}

  /** Gives every task of a run the run's lot; a run that no lot has is a fault. */
  static void add(ObjectNode plan, Findings findings) {
    Map<String, String> lots = lotsByRun(plan);
    JsonNode tasks = plan.path(TASKS);
    for (int i = 0; i < tasks.size(); i++) {
      if (tasks.get(i) instanceof ObjectNode task && !task.has(LOT) && task.path(RUN).isString()) {
        String run = task.get(RUN).stringValue();
        if (!lots.containsKey(run)) {
          findings.add(unknown(i, run));
        }
        task.put(LOT, lots.getOrDefault(run, run));
      }
    }
  }

  /** Takes the lot out of every task but the pours. */
  static void remove(ObjectNode plan) {
    for (JsonNode task : plan.path(TASKS)) {
      if (task.has(RUN)) {
        ((ObjectNode) task).remove(LOT);
      }
    }
  }

  private static Map<String, String> lotsByRun(ObjectNode plan) {
    Map<String, String> lots = new HashMap<>();
    for (JsonNode lot : plan.path("lots")) {
      for (JsonNode run : lot.path("runs")) {
        lots.put(run.path(ID).asString(""), lot.path(ID).asString(""));
      }
    }
    return lots;
  }

  private static Fault unknown(int task, String run) {
    String path = JsonPath.ROOT + JsonPath.field(TASKS) + JsonPath.index(task);
    return new Fault(
        path + JsonPath.field(RUN), Shown.text(run), "the id of a run of one of the plan's lots");
  }
}
