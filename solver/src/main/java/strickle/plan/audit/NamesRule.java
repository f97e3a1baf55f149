package strickle.plan.audit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.Task;

/** No two lots, runs or tasks share a name, and a task names the lot its run is poured from. */
final class NamesRule implements Rule {

  @Override
  public int number() {
    return 0;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    List<Lot> lots = facts.plan().lots();
    List<Task> tasks = facts.plan().tasks();
    distinct("lot ", lots.stream().map(Lot::id).toList(), findings);
    distinct(
        "run ", lots.stream().flatMap(lot -> lot.runs().stream()).map(Run::id).toList(), findings);
    distinct("task ", tasks.stream().map(Task::id).toList(), findings);
    Map<String, String> lotOfRun = new HashMap<>();
    lots.forEach(lot -> lot.runs().forEach(run -> lotOfRun.putIfAbsent(run.id(), lot.id())));
    tasks.forEach(task -> lotOfTask(task, lotOfRun, findings));
  }

  private static void distinct(String what, List<String> names, Findings findings) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      findings.unless(seen.add(name), what + name, "two have this name; each needs its own");
    }
  }

  private static void lotOfTask(Task task, Map<String, String> lotOfRun, Findings findings) {
    String lot = task.run().map(lotOfRun::get).orElse(task.lot());
    findings.unless(
        lot.equals(task.lot()),
        "task " + task.id(),
        "names lot " + task.lot() + ", but its run is poured from lot " + lot);
  }
}
