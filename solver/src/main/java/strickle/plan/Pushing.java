package strickle.plan;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Person;
import strickle.shop.Calendar;
import strickle.shop.Clock;

/**
 * The present plan with the tasks still to come pushed back, each no further than what comes before
 * it makes necessary: the same lots by the same people in the same order. It is a proposal, as
 * places at stations are not looked at: what cannot stay where it is pushed to is let go of later.
 */
final class Pushing {

  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

  /** Where a task has to wait for, and why. */
  private record Bound(int minute, String reason) {}

  private final Standing standing;
  private final TaskRules rules;
  private final boolean anybody;
  private final int until;
  private final Set<String> pinned;
  private final Map<String, HoursTaken> stints = new LinkedHashMap<>();
  private final Map<String, Bound> units = new HashMap<>();
  private final Map<String, Task> pushed = new HashMap<>();
  private final Set<String> out = new HashSet<>();
  private final Map<String, String> reasons = new LinkedHashMap<>();

  /**
   * @param anybody whether a task that cannot be on time may go to who can do it first; otherwise
   *     only where its most-wait would be exceeded
   * @param until only what was to begin before this minute is pushed, and nothing beyond it
   */
  Pushing(
      Standing standing,
      List<Calendar> hours,
      List<Clock> clocks,
      RestPins pins,
      boolean anybody,
      int until) {
    this.standing = standing;
    this.rules = new TaskRules(standing, clocks);
    this.anybody = anybody;
    this.until = until;
    this.pinned = new HashSet<>();
    pins.present().forEach(lot -> pinned.add(Tasks.pour(lot)));
    List<Person> people = standing.book().people();
    for (int i = 0; i < people.size(); i++) {
      stints.put(people.get(i).id(), new HoursTaken(hours.get(i)));
    }
    pins.fresh().forEach(lot -> take(lot.pour()));
    push();
  }

  /** The tasks where they are pushed to. */
  Tasks tasks() {
    return new Tasks(pushed.values());
  }

  /** Whether a task is pushed out of the time in which tasks are pushed, and so stays nowhere. */
  boolean isOut(Task task) {
    return out.contains(Tasks.idOf(task));
  }

  /** Why tasks are not where they were planned, by task. */
  Map<String, String> reasons() {
    return reasons;
  }

  private void push() {
    standing.history().forEach(this::happened);
    List<Task> toCome = new ArrayList<>();
    for (Task task : standing.present().tasks()) {
      if (standing.history(Tasks.idOf(task)).isEmpty() && rules.isNeeded(task)) {
        toCome.add(task);
        if (pinned.contains(Tasks.idOf(task))) {
          take(task);
        }
      }
    }
    toCome.sort(Comparator.comparingInt(standing::start));
    toCome.forEach(this::place);
  }

  private void happened(String id, Task task) {
    pushed.put(id, task);
    take(task);
    held(task);
  }

  private void take(Task task) {
    HoursTaken stint = stints.get(task.person());
    task.spells()
        .forEach(
            spell ->
                stint.take(
                    words(task), standing.minute(spell.start()), standing.minute(spell.end())));
  }

  private String words(Task task) {
    String of = task.run().orElse(task.lot());
    return switch (task.kind()) {
      case POUR -> "the pour of " + of;
      case DEMOULD -> "the demould of " + of;
      case STEP -> "step " + task.step().orElseThrow() + " of " + of;
    };
  }

  /** Units are held until the demould is over, however late it is. */
  private void held(Task task) {
    List<Run> own = task.run().map(run -> List.of(rules.run(run))).orElse(runsOf(task.lot()));
    boolean pour = task.kind() == TaskKind.POUR;
    if (task.kind() == TaskKind.STEP) {
      return;
    }
    for (Run run : own) {
      boolean out = standing.history(Tasks.after(run.id(), 1)).isPresent();
      for (FormHold hold : run.forms()) {
        int until = pour ? Integer.MAX_VALUE : standing.end(task);
        String name = standing.book().form(hold.form()).name();
        String at = MOMENT.format(task.end());
        Bound bound = new Bound(until, name + " is not free until " + at);
        if (!(pour && out)) {
          hold.units().forEach(unit -> units.put(hold.form() + "#" + unit, bound));
        }
      }
    }
  }

  private List<Run> runsOf(String lot) {
    return rules.lot(lot).runs();
  }

  private void place(Task task) {
    String id = Tasks.idOf(task);
    boolean pin = pinned.contains(id);
    boolean still = pin || standing.start(task) >= until;
    boolean free = pin || !still || isFree(task);
    Optional<Task> moved = still ? Optional.of(task).filter(one -> free) : first(task);
    boolean goesOut = moved.isEmpty() || (!still && standing.start(moved.get()) >= until);
    pushed.put(id, goesOut ? task : moved.get());
    if (goesOut) {
      out.add(id);
    } else {
      take(pushed.get(id));
      held(pushed.get(id));
    }
  }

  /** Whether whoever is to do a task is at nothing else that has been pushed there. */
  private boolean isFree(Task task) {
    int minutes = (int) task.minutes();
    return stints.get(task.person()).takenBy(standing.start(task), minutes).isEmpty();
  }

  /** Where a task fits in first, by who is to do it or, where that is too late, by another. */
  private Optional<Task> first(Task task) {
    Bound bound = bound(task);
    if (bound.minute() == Integer.MAX_VALUE) {
      return Optional.empty();
    }
    int minutes = rules.minutes(task);
    List<Calendar.Spell> own = spells(task.person(), bound, minutes, task);
    boolean onTime = !own.isEmpty() && own.get(0).start() == standing.start(task);
    boolean tooLate = own.isEmpty() || own.get(0).start() > latest(task);
    String person = task.person();
    if (tooLate || (anybody && !onTime)) {
      for (String other : rules.may(task)) {
        List<Calendar.Spell> theirs = spells(other, bound, minutes, task);
        if (!theirs.isEmpty() && (own.isEmpty() || end(theirs) < end(own))) {
          own = theirs;
          person = other;
        }
      }
    }
    if (own.isEmpty()) {
      return Optional.empty();
    }
    boolean stays = onTime && person.equals(task.person());
    if (!stays) {
      reasons.put(Tasks.idOf(task), reason(task, bound, minutes));
    }
    return Optional.of(moved(task, person, own));
  }

  private int latest(Task task) {
    return task.kind() == TaskKind.POUR ? Integer.MAX_VALUE : rules.latest(task, before(task));
  }

  private List<Calendar.Spell> spells(String person, Bound bound, int minutes, Task task) {
    boolean inOne = task.kind() == TaskKind.POUR;
    return stints.get(person).first(bound.minute(), minutes, inOne);
  }

  private static int end(List<Calendar.Spell> spells) {
    return spells.get(spells.size() - 1).end();
  }

  private Task moved(Task task, String person, List<Calendar.Spell> spells) {
    List<Spell> at =
        spells.stream()
            .map(one -> new Spell(standing.time().at(one.start()), standing.time().at(one.end())))
            .toList();
    return new Task(task.id(), task.kind(), task.lot(), task.run(), task.step(), person, at);
  }

  private String reason(Task task, Bound bound, int minutes) {
    if (!bound.reason().isEmpty()) {
      return bound.reason();
    }
    String name = standing.book().person(task.person()).name();
    return stints
        .get(task.person())
        .takenBy(bound.minute(), minutes)
        .map(other -> name + " is still at " + other + " then")
        .orElse(name + " is not there for it then");
  }

  /** The first minute at which a task can start; its planned one, if nothing is in the way. */
  private Bound bound(Task task) {
    Bound bound = new Bound(standing.start(task), "");
    bound = later(bound, standing.now(), "it has not been reported to have begun by now");
    if (task.kind() == TaskKind.POUR) {
      for (Run run : runsOf(task.lot())) {
        for (FormHold hold : run.forms()) {
          for (int unit : hold.units()) {
            Bound free = units.getOrDefault(hold.form() + "#" + unit, bound);
            bound = later(bound, free.minute(), free.reason());
          }
        }
      }
      return bound;
    }
    Task before = before(task);
    int over = rules.over(task, before);
    boolean movedBefore = reasons.containsKey(Tasks.idOf(before));
    String late =
        movedBefore ? "the task before it has moved" : "the wait before it is not over by then";
    return later(bound, over, late);
  }

  private static Bound later(Bound bound, int minute, String reason) {
    return minute > bound.minute() ? new Bound(minute, reason) : bound;
  }

  private Task before(Task task) {
    int stage = TaskRules.stage(task);
    return pushed.get(
        stage == 1 ? Tasks.pour(task.lot()) : Tasks.after(task.run().orElseThrow(), stage - 1));
  }
}
