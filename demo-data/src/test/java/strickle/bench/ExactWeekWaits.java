package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;

/** Waits between the tasks of a run, at least so long and at most so long. */
final class ExactWeekWaits {

  private final ExactWeekModel week;
  private final CpModel model;

  ExactWeekWaits(ExactWeekModel week) {
    this.week = week;
    this.model = week.model;
  }

  void add() {
    for (ExactWeekRun run : week.runs) {
      ExactWeekReach reach = week.reach(run.kind);
      LinearArgument from = run.setStart;
      int wash = run.kind.mix().washMinutes();
      int first = run.kind.lotMinutes() + run.kind.fillMinutes() - wash;
      int last = reach.latestEnd[0] - wash;
      for (int i = 0; i < run.stages.size(); i++) {
        ExactWeekTask task = run.stages.get(i);
        add(run, i, from, first, last);
        from = task.end;
        first = reach.earliestStart[i + 1] + task.minutes.least();
        last = reach.latestEnd[i + 1];
      }
    }
  }

  private void add(ExactWeekRun run, int number, LinearArgument from, int first, int last) {
    ExactWeekKind.Stage stage = run.kind.stages().get(number);
    ExactWeekTask task = run.stages.get(number);
    int latest = Math.min(last, week.ages.latest(week.horizon, stage.hours(), stage.cures()));
    if (latest < first) {
      model.addEquality(run.present, 0);
      return;
    }
    List<ExactWeekAges.Piece> pieces =
        week.ages.pieces(stage.hours(), stage.cures(), first, latest);
    List<Literal> choice = new ArrayList<>(List.of(run.present.not()));
    for (ExactWeekAges.Piece piece : pieces) {
      Literal in = pieces.size() == 1 ? run.present : model.newBoolVar("wait " + piece.first());
      choice.add(in);
      model
          .addLinearExpressionInDomain(from, new Domain(piece.first(), piece.last()))
          .onlyEnforceIf(in);
      least(task, from, piece, in);
    }
    model.addExactlyOne(choice);
    stage
        .atMostMinutes()
        .ifPresent(
            most ->
                model
                    .addLessOrEqual(task.start, LinearExpr.affine(from, 1, most))
                    .onlyEnforceIf(run.present));
  }

  private void least(
      ExactWeekTask task, LinearArgument from, ExactWeekAges.Piece piece, Literal in) {
    if (piece.isShift()) {
      model
          .addGreaterOrEqual(task.start, LinearExpr.affine(from, 1, piece.minutes()))
          .onlyEnforceIf(in);
      return;
    }
    LinearExpr over =
        LinearExpr.affine(from, piece.slope(), piece.height() - piece.slope() * piece.first());
    model
        .addGreaterOrEqual(LinearExpr.term(task.start, ExactWeekAges.PARTS), over)
        .onlyEnforceIf(in);
  }
}
