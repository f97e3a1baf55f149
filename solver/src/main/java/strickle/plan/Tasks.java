package strickle.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import strickle.book.Book;

/** The tasks of a plan by what they are of. */
final class Tasks {

  private final Map<String, Task> byId = new HashMap<>();

  Tasks(Plan plan) {
    this(plan.tasks());
  }

  Tasks(Collection<Task> tasks) {
    tasks.forEach(task -> byId.put(idOf(task), task));
  }

  /** The id that a task has by what it is of, whatever it is called. */
  static String idOf(Task task) {
    String of = task.run().orElse(task.lot());
    return switch (task.kind()) {
      case POUR -> pour(of);
      case DEMOULD -> after(of, 1);
      case STEP -> after(of, task.step().orElseThrow() + 1);
    };
  }

  static String pour(String lot) {
    return lot + "/pour";
  }

  /** The task of a run that comes after so many others: the demould after the pour. */
  static String after(String run, int before) {
    return run + (before == 1 ? "/demould" : "/step-" + (before - 1));
  }

  /** A task still to come, after so many others of its run. */
  static Task toCome(String lot, String run, int before, String person, List<Spell> spells) {
    return new Task(
        after(run, before),
        before == 1 ? TaskKind.DEMOULD : TaskKind.STEP,
        lot,
        Optional.of(run),
        before == 1 ? OptionalInt.empty() : OptionalInt.of(before - 1),
        person,
        spells);
  }

  Optional<Task> get(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** Ids of the tasks that a run needs after its pour, in order. */
  static List<String> needed(Book book, Run run) {
    List<String> ids = new ArrayList<>();
    int steps = book.piece(run.piece()).route().size();
    for (int before = 1; before <= steps + 1; before++) {
      ids.add(after(run.id(), before));
    }
    return ids;
  }
}
