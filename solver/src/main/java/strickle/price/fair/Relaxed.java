package strickle.price.fair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The best of a branch if levels could be mixed and columns parted, a linear programme.
 *
 * @param worth its worth; nothing in the branch is worth more
 * @param shares of each item the share of each level, 0 outside the branch
 * @param sides how much of each side column
 */
record Relaxed(double worth, List<List<Double>> shares, List<Double> sides) {

  /** Copies the lists. */
  Relaxed {
    shares = shares.stream().map(List::copyOf).toList();
    sides = List.copyOf(sides);
  }

  /** Solves it; empty when nothing in the branch keeps the limits. */
  static Optional<Relaxed> of(Programme programme, Branch branch) {
    return new Model(programme, branch).solved();
  }

  /** The linear programme as the library wants it. */
  private static final class Model {

    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final List<Expression> rows = new ArrayList<>();
    private final List<List<Variable>> items = new ArrayList<>();
    private final List<Variable> sides = new ArrayList<>();

    Model(Programme programme, Branch branch) {
      programme.limits().forEach(limit -> rows.add(model.addExpression().upper(limit.most())));
      for (int i = 0; i < programme.items().size(); i++) {
        items.add(columns(programme.items().get(i), branch.items().get(i)));
      }
      for (int i = 0; i < programme.sides().size(); i++) {
        Branch.Range range = branch.sides().get(i);
        Variable column = model.addVariable().lower(range.least()).upper(range.most());
        use(column, programme.sides().get(i).uses());
        sides.add(column);
      }
    }

    private List<Variable> columns(List<Programme.Level> levels, Branch.Range range) {
      Expression one = model.addExpression().level(1);
      List<Variable> columns = new ArrayList<>();
      for (Programme.Level level : levels.subList(range.least(), range.most() + 1)) {
        Variable column = model.addVariable().lower(0).upper(1).weight(level.worth());
        one.set(column, 1);
        use(column, level.uses());
        columns.add(column);
      }
      return columns;
    }

    private void use(Variable column, List<Double> uses) {
      for (int i = 0; i < rows.size(); i++) {
        if (uses.get(i) != 0) {
          rows.get(i).set(column, uses.get(i));
        }
      }
    }

    Optional<Relaxed> solved() {
      Optimisation.Result result = model.maximise();
      if (!result.getState().isFeasible()) {
        return Optional.empty();
      }
      List<List<Double>> shares = items.stream().map(columns -> values(columns, result)).toList();
      return Optional.of(new Relaxed(result.getValue(), shares, values(sides, result)));
    }

    private List<Double> values(List<Variable> columns, Optimisation.Result result) {
      return columns.stream().map(one -> result.doubleValue(model.indexOf(one))).toList();
    }
  }
}
