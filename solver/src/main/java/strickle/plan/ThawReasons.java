package strickle.plan;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import strickle.book.FormUse;
import strickle.shop.Calendar;
import strickle.shop.Clock;

/**
 * Says what keeps a task of a plan under way from being where it was planned, once the rest is laid
 * out anew. Only what is true of the place it had, in the new plan, is a reason: that its time is
 * over, that what comes before it is not, that its person is not there or is at something that was
 * to be over by then, or that a form is not free. Nothing of that: it was moved for the others'
 * sake.
 */
final class ThawReasons {

  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

  private final Standing standing;
  private final List<Calendar> hours;
  private final TaskRules rules;
  private final Owed owed;
  private final Plan after;
  private final Map<String, Task> now = new HashMap<>();
  private final Map<String, Task> was = new HashMap<>();

  /**
   * @param hours everybody's calendar from now on, in the order of the book
   * @param after the new plan
   */
  ThawReasons(Standing standing, List<Calendar> hours, List<Clock> clocks, Owed owed, Plan after) {
    this.standing = standing;
    this.hours = hours;
    this.rules = new TaskRules(standing, clocks);
    this.owed = owed;
    this.after = after;
    after.tasks().forEach(task -> now.put(Tasks.idOf(task), task));
    standing.present().tasks().forEach(task -> was.put(Tasks.idOf(task), task));
  }

  /** Why a task of the present plan that has moved could not stay; a clause. */
  Optional<String> of(Task task) {
    if (isTooMuch(task)) {
      return Optional.of("not all of it is needed any more");
    }
    if (standing.start(task) < standing.now()) {
      return Optional.of("it has not been reported to have begun by now");
    }
    return before(task).or(() -> person(task)).or(() -> forms(task)).or(() -> busy(task));
  }

  /** Whether its lot is gone, and less of one of its pieces is needed than was planned. */
  private boolean isTooMuch(Task task) {
    return !now.containsKey(Tasks.idOf(task))
        && rules.lot(task.lot()).runs().stream().anyMatch(run -> isTooMuch(run.piece()));
  }

  private boolean isTooMuch(String piece) {
    int planned =
        standing.present().lots().stream()
            .filter(lot -> !standing.isBegun(lot))
            .flatMap(lot -> lot.runs().stream())
            .filter(run -> run.piece().equals(piece))
            .mapToInt(Run::castings)
            .sum();
    return owed.toPour().getOrDefault(piece, 0) < planned;
  }

  private Optional<String> before(Task task) {
    if (task.kind() == TaskKind.POUR) {
      return Optional.empty();
    }
    int stage = TaskRules.stage(task);
    String id =
        stage == 1 ? Tasks.pour(task.lot()) : Tasks.after(task.run().orElseThrow(), stage - 1);
    Task before = now.get(id);
    if (before == null) {
      return Optional.of("the task before it has moved");
    }
    boolean tooSoon = rules.over(task, before) > standing.start(task);
    boolean tooLate = rules.latest(task, before) < standing.start(task);
    boolean moved = !before.isHistory() && !isWhere(before, was.get(id));
    if (moved && (tooSoon || tooLate)) {
      return Optional.of("the task before it has moved");
    }
    if (tooSoon) {
      return Optional.of("the wait before it is not over by then");
    }
    return tooLate ? Optional.of("the wait before it would be too long") : Optional.empty();
  }

  private static boolean isWhere(Task task, Task other) {
    return other != null && task.start().isEqual(other.start()) && task.end().isEqual(other.end());
  }

  private Optional<String> person(Task task) {
    if (!rules.may(task).contains(task.person())) {
      return Optional.of("somebody else has to do it");
    }
    return isOpen(task) ? Optional.empty() : Optional.of(name(task) + " is not there for it then");
  }

  private String name(Task task) {
    return standing.book().person(task.person()).name();
  }

  /** What its person is at then that was to begin before it. */
  private Optional<String> busy(Task task) {
    return after.tasks().stream()
        .filter(other -> other.person().equals(task.person()) && !isSame(other, task))
        .filter(other -> isOverdue(other, task) && overlaps(other, task))
        .findFirst()
        .map(
            other ->
                other.start().isAfter(task.start())
                    ? name(task) + " has " + words(other) + " to do in that time"
                    : name(task) + " is still at " + words(other) + " then");
  }

  private static boolean isSame(Task one, Task other) {
    return Tasks.idOf(one).equals(Tasks.idOf(other));
  }

  /** Whether it was to begin before another, so that it is no choice that it comes first. */
  private boolean isOverdue(Task one, Task later) {
    Task planned = was.get(Tasks.idOf(one));
    return one.isHistory() || (planned != null && planned.start().isBefore(later.start()));
  }

  private static boolean overlaps(Task one, Task other) {
    return one.spells().stream()
        .anyMatch(
            a ->
                other.spells().stream()
                    .anyMatch(b -> a.start().isBefore(b.end()) && b.start().isBefore(a.end())));
  }

  /** Whether its person has the hours in which it was planned. */
  private boolean isOpen(Task task) {
    List<String> people = standing.book().people().stream().map(one -> one.id()).toList();
    Calendar calendar = hours.get(people.indexOf(task.person()));
    int start = standing.start(task);
    int minutes = rules.minutes(task);
    int worked = calendar.worked(start);
    return worked + minutes <= calendar.workingMinutes()
        && calendar.startOf(worked) == start
        && calendar.endOf(worked + minutes) == standing.end(task)
        && calendar.spells(worked, minutes).size() == task.spells().size();
  }

  private static String words(Task task) {
    return switch (task.kind()) {
      case POUR -> "the pour of " + task.lot();
      case DEMOULD -> "the demould of " + task.run().orElseThrow();
      case STEP -> "step " + task.step().orElseThrow() + " of " + task.run().orElseThrow();
    };
  }

  /** A form that those poured before still hold, or that is broken. */
  private Optional<String> forms(Task pour) {
    if (pour.kind() != TaskKind.POUR) {
      return Optional.empty();
    }
    Map<String, Integer> needed = new HashMap<>();
    rules.lot(pour.lot()).runs().forEach(run -> uses(run).forEach(use -> add(needed, run, use)));
    return needed.keySet().stream()
        .sorted()
        .flatMap(form -> form(pour, form, needed.get(form)).stream())
        .findFirst();
  }

  private List<FormUse> uses(Run run) {
    return standing.book().mould(standing.book().piece(run.piece()).mould()).forms();
  }

  private static void add(Map<String, Integer> needed, Run run, FormUse use) {
    needed.merge(use.form(), run.castings() * use.count(), Integer::sum);
  }

  private Optional<String> form(Task pour, String id, int units) {
    String name = standing.book().form(id).name();
    int gone =
        standing.broken().stream()
            .filter(one -> one.form().equals(id) && one.isAt(pour.start()))
            .mapToInt(one -> one.units().size())
            .sum();
    int whole = standing.book().form(id).count() - gone;
    if (units > whole) {
      return Optional.of("no whole " + name + " is free");
    }
    List<Task> out = holders(pour, id);
    int free = whole - out.stream().mapToInt(task -> held(task, id)).sum();
    for (Task one : out) {
      if (free >= units) {
        return Optional.empty();
      }
      free += held(one, id);
      if (free >= units) {
        return Optional.of(name + " is not free until " + MOMENT.format(one.end()));
      }
    }
    return Optional.empty();
  }

  private int held(Task demould, String form) {
    Run run = rules.run(demould.run().orElseThrow());
    return uses(run).stream()
        .filter(use -> use.form().equals(form))
        .mapToInt(use -> run.castings() * use.count())
        .sum();
  }

  /** The demoulds of runs that hold a form then and were to be poured before, first out first. */
  private List<Task> holders(Task pour, String form) {
    List<Task> out = new ArrayList<>();
    for (Task task : after.tasks()) {
      Task begin = now.get(Tasks.pour(task.lot()));
      boolean known = task.kind() == TaskKind.DEMOULD && was.containsKey(Tasks.idOf(begin));
      if (known
          && !task.lot().equals(pour.lot())
          && isOverdue(begin, pour)
          && !begin.start().isAfter(pour.start())
          && task.end().isAfter(pour.start())
          && rules.run(task.run().orElseThrow()) != null
          && held(task, form) > 0) {
        out.add(task);
      }
    }
    out.sort(Comparator.comparing(Task::end));
    return out;
  }
}
