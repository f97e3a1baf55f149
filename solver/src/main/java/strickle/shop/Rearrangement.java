package strickle.shop;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningSolutionMetaModel;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.MutableSolutionView;
import java.util.List;

/** The move of this search: brings the claims of a sequence into another order. */
final class Rearrangement implements Move<Priority> {

  private static final PlanningListVariableMetaModel<Priority, Sequence, Claim> CLAIMS =
      PlanningSolutionMetaModel.of(Priority.class, Sequence.class)
          .genuineEntity(Sequence.class)
          .listVariable("claims", Claim.class);

  private final Sequence sequence;
  private final int[] order;

  /**
   * A move to an order.
   *
   * @param order the index of the claim at each place; kept, not copied
   */
  Rearrangement(Sequence sequence, int[] order) {
    this.sequence = sequence;
    this.order = order;
  }

  @Override
  public void execute(MutableSolutionView<Priority> view) {
    List<Claim> claims = sequence.getClaims();
    int[] place = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      place[order[i]] = i;
    }
    for (int i = 0; i < order.length; i++) {
      while (claims.get(i).index() != order[i]) {
        int target = place[claims.get(i).index()];
        // One claim that went far to the right has shifted all between by one: move it, not them.
        boolean wentRight = claims.get(i + 1).index() == order[i];
        if (wentRight) {
          view.moveValueInList(CLAIMS, sequence, i, target);
        } else {
          view.moveValueInList(CLAIMS, sequence, find(claims, order[i], i + 1), i);
        }
      }
    }
  }

  private static int find(List<Claim> claims, int index, int from) {
    int at = from;
    while (claims.get(at).index() != index) {
      at++;
    }
    return at;
  }

  @Override
  public String describe() {
    return "Rearrangement";
  }
}
