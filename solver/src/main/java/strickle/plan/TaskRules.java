package strickle.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import strickle.book.After;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.WaitKind;
import strickle.shop.Clock;

/** What the book asks of a task of the present plan: its minutes, its waits, and who may do it. */
final class TaskRules {

  private final Standing standing;
  private final List<Clock> clocks;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, Run> runs = new HashMap<>();

  TaskRules(Standing standing, List<Clock> clocks) {
    this.standing = standing;
    this.clocks = clocks;
    for (Lot lot : standing.present().lots()) {
      lots.put(lot.id(), lot);
      lot.runs().forEach(run -> runs.put(run.id(), standing.withLosses(run)));
    }
  }

  Lot lot(String id) {
    return lots.get(id);
  }

  Run run(String id) {
    return runs.get(id);
  }

  /** The place of a task of a run behind its pour, from 1. */
  static int stage(Task task) {
    return task.step().orElse(0) + 1;
  }

  /** Whether there is anything left to do it to; what is lost leaves its mould and no more. */
  boolean isNeeded(Task task) {
    boolean step = task.kind() == TaskKind.STEP;
    return !step || !Goods.isLost(standing.book(), run(task.run().orElseThrow()));
  }

  int minutes(Task task) {
    return task.kind() == TaskKind.POUR
        ? TaskMinutes.pour(standing.book(), lot(task.lot()))
        : TaskMinutes.after(standing.book(), run(task.run().orElseThrow()), stage(task));
  }

  /** Ids of those who may do it. */
  List<String> may(Task task) {
    List<String> by =
        task.kind() == TaskKind.STEP
            ? piece(task).route().get(task.step().orElseThrow() - 1).by()
            : List.of();
    return by.isEmpty() ? standing.book().people().stream().map(Person::id).toList() : by;
  }

  /** The minute the wait before a demould or step is over. */
  int over(Task task, Task before) {
    boolean set = task.kind() == TaskKind.DEMOULD;
    boolean ages = set || after(task).kind() == WaitKind.CURE;
    double hours = set ? mould(task).setHours() : after(task).hours();
    return clocks.get(ages ? Chains.ROOM : Chains.WALL).end(from(task, before), hours);
  }

  /** The last minute at which a demould or step may start. */
  int latest(Task task, Task before) {
    boolean set = task.kind() == TaskKind.DEMOULD;
    OptionalDouble most = set ? mould(task).setAtMostHours() : after(task).atMostHours();
    OptionalInt minutes = Chains.minutesOfAtMost(most);
    return minutes.isEmpty() ? Integer.MAX_VALUE : from(task, before) + minutes.getAsInt();
  }

  /** When the wait before a demould or step begins: the set does before the washing up. */
  private int from(Task task, Task before) {
    boolean set = task.kind() == TaskKind.DEMOULD;
    String mix = lot(task.lot()).mix();
    return standing.end(before) - (set ? standing.book().mix(mix).washMinutes() : 0);
  }

  private Piece piece(Task task) {
    return standing.book().piece(run(task.run().orElseThrow()).piece());
  }

  private After after(Task task) {
    return piece(task).route().get(task.step().orElseThrow() - 1).after();
  }

  private Mould mould(Task task) {
    return standing.book().mould(piece(task).mould());
  }
}
