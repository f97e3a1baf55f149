package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;

/** The sum over the runs of castings x minutes from the beginning of the plan to ready. */
final class ExactWeekFlow {

  private final ExactWeekModel week;
  private final CpModel model;
  private final LinearExprBuilder flow = LinearExpr.newBuilder();

  private ExactWeekFlow(ExactWeekModel week) {
    this.week = week;
    this.model = week.model;
    week.runs.forEach(this::add);
  }

  /** The flow, at least: once it is made small it is just that. */
  static LinearExpr of(ExactWeekModel week) {
    return new ExactWeekFlow(week).flow.build();
  }

  /** A run counts once for its first casting, once more if it has a second, and so on. */
  private void add(ExactWeekRun run) {
    List<Literal> has = new ArrayList<>(List.of(run.present));
    for (int casting = 2; casting <= run.kind.mostInRun(); casting++) {
      Literal one = model.newBoolVar("has " + casting);
      model.addImplication(one, has.getLast());
      has.add(one);
    }
    model.addEquality(run.castings, LinearExpr.sum(has.toArray(Literal[]::new)));
    for (Literal one : has) {
      IntVar minutes = model.newIntVar(0, week.horizon, "until ready");
      model.addGreaterOrEqual(minutes, run.ready()).onlyEnforceIf(one);
      flow.add(minutes);
    }
  }
}
