package strickle.plan.replan;

import java.util.List;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;

/**
 * A plan laid out anew and what has moved.
 *
 * @param plan the new plan; it has passed no audit yet
 * @param moves what has become of every task of the present plan, and what is new, by time
 * @param orders the orders that get later or earlier
 * @param newOrders what becomes of the orders that have come to the book since the present plan
 * @param goneOrders ids of the orders that are in the book no more
 * @param thawed tasks that should have kept person and time and could not
 */
public record Replanned(
    Plan plan,
    List<Move> moves,
    List<OrderShift> orders,
    List<OrderOutcome> newOrders,
    List<String> goneOrders,
    List<Thawed> thawed) {

  /** Takes its own copies of the lists. */
  public Replanned {
    moves = List.copyOf(moves);
    orders = List.copyOf(orders);
    newOrders = List.copyOf(newOrders);
    goneOrders = List.copyOf(goneOrders);
    thawed = List.copyOf(thawed);
  }

  /** How many tasks still to come have another time or person, are new or gone. */
  public long moved() {
    return moves.stream().filter(move -> move.change().isMove()).count();
  }
}
