package strickle.json;

import java.time.OffsetDateTime;
import java.util.List;
import strickle.plan.OrderOutcome;
import strickle.plan.replan.Comparison;
import strickle.plan.replan.Move;
import strickle.plan.replan.OrderShift;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.plan.replan.Thawed;
import tools.jackson.databind.node.ObjectNode;

/** Writes what has moved in a plan laid out anew, and the plan ({@code strickle-replan/1}). */
public final class ReplanFile {

  private static final FileFormat FORMAT =
      new FileFormat("strickle-replan/1", "a plan laid out anew");

  private record Body(
      OffsetDateTime now,
      OffsetDateTime frozenUntil,
      long moved,
      long movedMinutes,
      List<Move> moves,
      List<OrderShift> orders,
      List<OrderOutcome> newOrders,
      List<String> goneOrders,
      List<Thawed> thawed) {}

  private ReplanFile() {}

  /**
   * Writes a plan laid out anew, with a newline at the end. Tasks that have not changed are left
   * out of the moves.
   */
  public static String write(ReplanRequest request, Replanned replanned) {
    List<Move> moves =
        replanned.moves().stream().filter(move -> move.change() != Move.Change.UNCHANGED).toList();
    ObjectNode body =
        RecordWriter.object(
            new Body(
                request.now(),
                request.frozenUntil(),
                replanned.moved(),
                Comparison.movedMinutes(moves),
                moves,
                replanned.orders(),
                replanned.newOrders(),
                replanned.goneOrders(),
                replanned.thawed()));
    body.set("plan", PlanFile.tree(replanned.plan()));
    return FORMAT.text(body);
  }
}
