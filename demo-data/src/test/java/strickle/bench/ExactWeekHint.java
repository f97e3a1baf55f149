package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.Literal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** Says a plan in the words of the model: runs, lots, who does what, and when. */
final class ExactWeekHint {

  private final ExactWeekModel week;
  private final CpModel model;
  private final Map<String, Task> tasks = new HashMap<>();
  private final Map<String, ExactWeekRun> runs = new HashMap<>();

  private ExactWeekHint(ExactWeekModel week, Plan plan) {
    this.week = week;
    this.model = week.model;
    for (Task task : plan.tasks()) {
      tasks.put(key(task.run().orElse(task.lot()), task.kind(), task.step().orElse(0)), task);
    }
  }

  private static String key(String of, TaskKind kind, int step) {
    return of + " " + kind + " " + step;
  }

  /** Gives the model every decision of the plan as a hint. */
  static void give(ExactWeekModel week, Plan plan) {
    ExactWeekHint hint = new ExactWeekHint(week, plan);
    week.kinds.forEach(kind -> hint.give(kind, plan));
    plan.lots().forEach(hint::give);
  }

  private record Poured(Lot lot, Run run) {}

  private void give(ExactWeekKind kind, Plan plan) {
    List<Poured> poured =
        plan.lots().stream()
            .flatMap(lot -> lot.runs().stream().map(run -> new Poured(lot, run)))
            .filter(one -> one.run().piece().equals(kind.piece().id()))
            .sorted(Comparator.comparingInt(one -> start(pourOf(one.lot()))))
            .toList();
    List<ExactWeekRun> turns = week.runsOf(kind);
    for (int turn = 0; turn < turns.size(); turn++) {
      if (turn < poured.size()) {
        give(turns.get(turn), poured.get(turn).run());
      } else {
        model.addHint(turns.get(turn).castings, 0);
      }
    }
  }

  private void give(ExactWeekRun run, Run planned) {
    runs.put(planned.id(), run);
    model.addHint(run.castings, planned.castings());
    for (int i = 0; i < run.stages.size(); i++) {
      TaskKind kind = i == 0 ? TaskKind.DEMOULD : TaskKind.STEP;
      give(run.stages.get(i), tasks.get(key(planned.id(), kind, i)));
    }
  }

  private void give(Lot lot) {
    List<ExactWeekRun> members = lot.runs().stream().map(run -> runs.get(run.id())).toList();
    ExactWeekRun leader =
        members.stream().min(Comparator.comparingInt(run -> run.number)).orElseThrow();
    for (ExactWeekRun run : week.runs) {
      Literal joins = week.lots.joins[leader.number][run.number];
      if (joins != null) {
        model.addHint(joins, members.contains(run));
      }
    }
    give(leader.pour, pourOf(lot));
  }

  private Task pourOf(Lot lot) {
    return tasks.get(key(lot.id(), TaskKind.POUR, 0));
  }

  private void give(ExactWeekTask task, Task planned) {
    model.addHint(task.start, start(planned));
    for (ExactWeekTask.Hand hand : task.hands) {
      boolean by = week.book.people().get(hand.person()).id().equals(planned.person());
      if (task.hands.size() > 1) {
        model.addHint(hand.by(), by);
      }
    }
  }

  private int start(Task task) {
    return week.time.minute(task.start().toInstant());
  }
}
