package strickle.bench;

import com.google.ortools.sat.CpModelProto;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.time.Duration;
import java.util.List;
import strickle.plan.Plan;

/** Searches the model of a week, from one solution to better ones. */
final class ExactWeekSearch {

  private static final int WORKERS = 1;
  private static final double MILLIS = 1000;

  /** A bound is a whole number, but told as a fraction. */
  private static final double ROUNDING = 1e-6;

  private final ExactWeekModel week;

  /** A value for each variable of the model. */
  private List<Long> best;

  /**
   * Begins with a plan.
   *
   * @throws IllegalStateException when the plan is none in the model: one of the two is wrong
   */
  ExactWeekSearch(ExactWeekModel week, Plan plan) {
    this.week = week;
    ExactWeekHint.give(week, plan);
    week.model.minimize(lateThenFlow(week));
    CpSolver solver = solver(Duration.ofMinutes(1));
    solver.getParameters().setFixVariablesToTheirHintedValue(true);
    CpSolverStatus status = solver.solve(week.model);
    if (status != CpSolverStatus.OPTIMAL) {
      throw new IllegalStateException(
          "the model makes of the plan: " + status + " " + week.model.validate());
    }
    best = solver.response().getSolutionList();
  }

  /** With the plan as it is, what is left to decide: late hours and flow count no more than due. */
  private static LinearExpr lateThenFlow(ExactWeekModel week) {
    long mostFlow = 1;
    for (ExactWeekRun run : week.runs) {
      mostFlow += (long) run.kind.mostInRun() * week.horizon;
    }
    return LinearExpr.newBuilder().addTerm(week.late(), mostFlow).add(week.flow()).build();
  }

  /**
   * The least that was found of something, and the least it can be at all.
   *
   * @param value as found
   * @param bound nothing less is possible
   */
  record Least(long value, long bound) {}

  /** Looks for the least of an expression; what was found stays the starting point. */
  Least least(LinearExpr expression, Duration limit) {
    week.model.minimize(expression);
    hintBest();
    CpSolver solver = solver(limit);
    CpSolverStatus status = solver.solve(week.model);
    if (status == CpSolverStatus.INFEASIBLE || status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException("the search makes of its own solution: " + status);
    }
    long before = value(expression);
    if (status != CpSolverStatus.UNKNOWN && Math.round(solver.objectiveValue()) <= before) {
      best = solver.response().getSolutionList();
    }
    long bound = (long) Math.ceil(solver.bestObjectiveBound() - ROUNDING);
    return new Least(value(expression), bound);
  }

  private void hintBest() {
    week.model.clearHints();
    CpModelProto.Builder builder = week.model.getBuilder();
    for (int variable = 0; variable < best.size(); variable++) {
      builder.getSolutionHintBuilder().addVars(variable).addValues(best.get(variable));
    }
  }

  private static CpSolver solver(Duration limit) {
    CpSolver solver = new CpSolver();
    solver
        .getParameters()
        .setNumWorkers(WORKERS)
        .setRandomSeed(1)
        .setMaxTimeInSeconds(limit.toMillis() / MILLIS);
    return solver;
  }

  long value(IntVar variable) {
    return best.get(variable.getIndex());
  }

  boolean isTrue(Literal literal) {
    return value((LinearArgument) literal) == 1;
  }

  /** What an expression comes to in the best solution. */
  long value(LinearArgument argument) {
    LinearExpr expression = argument.build();
    long value = expression.getOffset();
    for (int i = 0; i < expression.numElements(); i++) {
      value += expression.getCoefficient(i) * best.get(expression.getVariableIndex(i));
    }
    return value;
  }
}
