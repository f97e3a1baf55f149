package strickle.plan;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Person;
import strickle.shop.Schedule;

/** Reads a plan back into the lots of a schedule, as far as a studio's shop still knows them. */
final class PresentLots {

  /** Somebody the book no longer has. */
  private static final int GONE = -1;

  private final StudioShop studio;

  /** A pour by its lot, any other task by its run and how many tasks of the run come before it. */
  private final Map<List<Object>, Task> tasks = new HashMap<>();

  private final Map<String, Integer> kinds = new HashMap<>();
  private final Map<String, Integer> workers = new HashMap<>();

  private PresentLots(StudioShop studio, Plan plan) {
    this.studio = studio;
    plan.tasks().forEach(task -> tasks.put(place(task), task));
    for (int kind = 0; kind < studio.pieces().size(); kind++) {
      kinds.putIfAbsent(studio.pieces().get(kind).id(), kind);
    }
    studio.book().people().stream().map(Person::id).forEach(id -> workers.put(id, workers.size()));
  }

  /** The lots of a plan whose pieces are still made by the same number of steps. */
  static List<Schedule.Lot> of(StudioShop studio, Plan plan) {
    PresentLots present = new PresentLots(studio, plan);
    List<Schedule.Lot> lots = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      List<Schedule.Run> runs =
          lot.runs().stream().flatMap(run -> present.run(run).stream()).toList();
      Task pour = present.tasks.get(List.of(lot.id(), 0));
      if (!runs.isEmpty() && pour != null) {
        lots.add(new Schedule.Lot(present.placed(pour), runs));
      }
    }
    return lots;
  }

  private Optional<Schedule.Run> run(Run run) {
    Integer kind = kinds.get(run.piece());
    if (kind == null) {
      return Optional.empty();
    }
    List<Schedule.Placed> rest = new ArrayList<>();
    for (Task next = next(run, 0); next != null; next = next(run, rest.size())) {
      rest.add(placed(next));
    }
    boolean whole = rest.size() + 1 == studio.shop().kinds().get(kind).chain().size();
    int done = whole ? rest.get(rest.size() - 1).end() : 0;
    return whole
        ? Optional.of(new Schedule.Run(kind, run.castings(), rest, done))
        : Optional.empty();
  }

  private Task next(Run run, int before) {
    return tasks.get(List.of(run.id(), before + 1));
  }

  private static List<Object> place(Task task) {
    return task.run().isEmpty()
        ? List.of(task.lot(), 0)
        : List.of(task.run().get(), task.step().orElse(0) + 1);
  }

  private Schedule.Placed placed(Task task) {
    int start = minute(task.spells().get(0).start());
    int end = minute(task.end());
    int worker = workers.getOrDefault(task.person(), GONE);
    return new Schedule.Placed(worker, 0, (int) task.minutes(), start, end);
  }

  private int minute(OffsetDateTime moment) {
    return (int) studio.time().minute(moment.toInstant());
  }
}
