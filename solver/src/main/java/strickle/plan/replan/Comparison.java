package strickle.plan.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Task;

/** Compares a plan with the one before it: what has moved, and which orders feel it. */
public final class Comparison {

  /** Half a working day: three tasks pushed a little are better than two put off to tomorrow. */
  private static final long EACH_MINUTES = 240;

  private Comparison() {}

  /** What has become of every task of the plan before, and what is new, in order of time. */
  public static List<Move> moves(Plan before, Plan after) {
    Map<String, Task> now = new HashMap<>();
    after.tasks().forEach(task -> now.put(task.id(), task));
    List<Move> moves = new ArrayList<>();
    for (Task task : before.tasks()) {
      moves.add(move(task, Optional.ofNullable(now.remove(task.id()))));
    }
    after.tasks().stream()
        .filter(task -> now.containsKey(task.id()))
        .forEach(task -> moves.add(fresh(task)));
    moves.sort(Comparator.comparing(Comparison::start));
    return List.copyOf(moves);
  }

  private static Instant start(Move move) {
    return move.after().or(move::before).orElseThrow().start().toInstant();
  }

  private static Move fresh(Task task) {
    return new Move(task.id(), Move.Change.NEW, Optional.empty(), Optional.of(slot(task)));
  }

  private static Move move(Task before, Optional<Task> after) {
    Optional<Move.Slot> was = Optional.of(slot(before));
    if (after.isEmpty()) {
      return new Move(before.id(), Move.Change.GONE, was, Optional.empty());
    }
    Task now = after.get();
    boolean happened = now.isHistory() && !(before.done() && now.done());
    Move.Change change = happened ? Move.Change.HAPPENED : change(before, now);
    return new Move(before.id(), change, was, Optional.of(slot(now)));
  }

  private static Move.Change change(Task before, Task now) {
    boolean samePerson = before.person().equals(now.person());
    boolean sameTime = before.start().isEqual(now.start()) && before.end().isEqual(now.end());
    if (samePerson) {
      return sameTime ? Move.Change.UNCHANGED : Move.Change.MOVED;
    }
    return sameTime ? Move.Change.OTHER_PERSON : Move.Change.MOVED_TO_OTHER_PERSON;
  }

  private static Move.Slot slot(Task task) {
    return new Move.Slot(task.person(), task.start(), task.end());
  }

  /**
   * How much moves: every task still to come that has moved, is new or gone counts like {@value
   * #EACH_MINUTES} minutes, and besides the minutes by which it moves.
   */
  public static long stir(List<Move> moves) {
    return moves.stream()
        .filter(move -> move.change().isMove())
        .mapToLong(move -> EACH_MINUTES + minutes(move))
        .sum();
  }

  /** By how many minutes all tasks still to come have moved. */
  public static long movedMinutes(List<Move> moves) {
    return moves.stream()
        .filter(move -> move.change().isMove())
        .mapToLong(Comparison::minutes)
        .sum();
  }

  private static long minutes(Move move) {
    if (move.before().isEmpty() || move.after().isEmpty()) {
      return 0;
    }
    return Math.abs(
        Duration.between(move.before().get().start(), move.after().get().start()).toMinutes());
  }

  /** The orders that only the plan after has, in its order. */
  public static List<OrderOutcome> newOrders(Plan before, Plan after) {
    List<String> known = before.orders().stream().map(OrderOutcome::order).toList();
    return after.orders().stream().filter(order -> !known.contains(order.order())).toList();
  }

  /** Ids of the orders that only the plan before has, in its order. */
  public static List<String> goneOrders(Plan before, Plan after) {
    List<String> known = after.orders().stream().map(OrderOutcome::order).toList();
    return before.orders().stream()
        .map(OrderOutcome::order)
        .filter(order -> !known.contains(order))
        .toList();
  }

  /**
   * The orders that get later or earlier, or miss their due by more or less as it is another, in
   * the order of the plan after.
   */
  public static List<OrderShift> orders(Plan before, Plan after) {
    Map<String, OrderOutcome> was = new HashMap<>();
    before.orders().forEach(order -> was.put(order.order(), order));
    return after.orders().stream()
        .filter(order -> was.containsKey(order.order()))
        .map(order -> shift(was.get(order.order()), order))
        .filter(shift -> shift.minutes() != 0 || shift.lateBefore() != shift.lateAfter())
        .toList();
  }

  private static OrderShift shift(OrderOutcome before, OrderOutcome after) {
    return new OrderShift(
        after.order(),
        before.ready(),
        after.ready(),
        Duration.between(before.ready(), after.ready()).toMinutes(),
        before.lateMinutes(),
        after.lateMinutes());
  }
}
