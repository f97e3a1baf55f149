package strickle.bench;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import strickle.book.Order;
import strickle.plan.Needs;

/**
 * How late the orders are. An order waits for so many castings of a piece, the first to be ready:
 * the model may choose which runs count, and choosing the first ones is the best it can do.
 */
final class ExactWeekOrders {

  private static final int HOUR = 60;

  private final ExactWeekModel week;
  private final CpModel model;
  private final LinearExprBuilder late = LinearExpr.newBuilder();
  private final int decimals;

  ExactWeekOrders(ExactWeekModel week) {
    this.week = week;
    this.model = week.model;
    this.decimals =
        week.book.orders().stream()
            .mapToInt(order -> Math.max(0, order.weight().stripTrailingZeros().scale()))
            .max()
            .orElse(0);
    Needs needs = Needs.of(week.book);
    for (Order order : week.book.orders()) {
      add(order, needs.of(order.id()));
    }
  }

  LinearExpr late() {
    return late.build();
  }

  /** By what the weights were multiplied to make them whole. */
  long weightScale() {
    return BigDecimal.TEN.pow(decimals).longValueExact();
  }

  private void add(Order order, Map<String, Integer> needs) {
    long weight = order.weight().movePointRight(decimals).longValueExact();
    int due = week.time.minute(order.due());
    if (weight == 0 || due >= week.horizon) {
      return;
    }
    int most = Math.ceilDiv(week.horizon - due, HOUR);
    IntVar hours = model.newIntVar(Math.max(0, Math.ceilDiv(-due, HOUR)), most, order.id());
    late.addTerm(hours, weight);
    needs.forEach((piece, castings) -> add(piece, castings, hours, due));
  }

  private void add(String piece, int castings, IntVar hours, int due) {
    ExactWeekKind kind = week.kindOf(piece).orElseThrow();
    List<ExactWeekRun> runs = week.runsOf(kind);
    if (castings == kind.castings()) {
      runs.forEach(run -> waitFor(run, run.present, hours, due));
      return;
    }
    LinearExprBuilder counted = LinearExpr.newBuilder();
    for (ExactWeekRun run : runs) {
      Literal counts = model.newBoolVar("counts");
      IntVar part = model.newIntVar(0, kind.mostInRun(), "counted");
      model.addLessOrEqual(part, run.castings);
      model.addLessOrEqual(part, LinearExpr.term(counts, kind.mostInRun()));
      model.addImplication(counts, run.present);
      waitFor(run, counts, hours, due);
      counted.add(part);
    }
    model.addGreaterOrEqual(counted.build(), castings);
  }

  private void waitFor(ExactWeekRun run, Literal counts, IntVar hours, int due) {
    LinearArgument by = LinearExpr.affine(hours, HOUR, due);
    model.addGreaterOrEqual(by, run.ready()).onlyEnforceIf(counts);
  }
}
