package strickle.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import strickle.book.After;
import strickle.book.FormUse;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.WaitKind;
import strickle.shop.Calendar;
import strickle.shop.Clock;

/**
 * Which tasks of the present plan stay: all that have begun, and of those to come the ones that are
 * wanted to and still can. A task can stay only when those before it in its run do.
 */
final class Keeping {

  private final Standing standing;
  private final List<Calendar> hours;
  private final List<Clock> clocks;
  private final Owed owed;
  private final RestPins pins;
  private final Tasks planned;
  private final Map<String, String> reasons = new LinkedHashMap<>();
  private Tasks tasks;

  /**
   * @param hours everybody's calendar from now on, in the order of the book
   * @param clocks the clocks of the shop
   * @param pins the pins still to come: their lots stay before any other
   */
  Keeping(Standing standing, List<Calendar> hours, List<Clock> clocks, Owed owed, RestPins pins) {
    this.standing = standing;
    this.hours = hours;
    this.clocks = clocks;
    this.owed = owed;
    this.pins = pins;
    this.planned = new Tasks(standing.present());
    this.tasks = planned;
  }

  /** Why tasks that were wanted to stay could not, by task; of the last reading. */
  Map<String, String> reasons() {
    return reasons;
  }

  /**
   * The lots of which something stays, those under way first, then by what comes next in each.
   *
   * @param wanted which tasks, as planned, are to stay
   * @param pushed where they have been pushed to; empty: where they are planned
   */
  List<KeptLot> kept(Predicate<Task> wanted, Optional<Pushing> pushed) {
    reasons.clear();
    tasks = pushed.map(Pushing::tasks).orElse(planned);
    List<Lot> byPour = new ArrayList<>(standing.present().lots());
    byPour.sort(
        Comparator.comparing((Lot lot) -> !pins.present().contains(lot.id()))
            .thenComparingInt(this::start));
    Map<String, Integer> left = new HashMap<>(owed.toPour());
    left.replaceAll((piece, castings) -> castings - pins.fresh(piece));
    List<KeptLot> kept = new ArrayList<>();
    for (Lot lot : byPour) {
      kept(lot, wanted, left).ifPresent(kept::add);
    }
    kept.sort(
        Comparator.comparing((KeptLot one) -> !one.begun())
            .thenComparing(one -> !rests(one))
            .thenComparingInt(this::comesNext));
    return kept;
  }

  private int start(Lot lot) {
    return tasks.get(Tasks.pour(lot.id())).map(standing::start).orElse(0);
  }

  /** Whether a run rests at a station, waiting for its next step: it has to leave first. */
  private boolean rests(KeptLot kept) {
    return kept.begun()
        && kept.lot().runs().stream()
            .filter(run -> kept.rest(run).size() > 1)
            .map(run -> standing.book().piece(run.piece()).route().get(kept.rest(run).size() - 2))
            .anyMatch(step -> step.restsOn().isPresent());
  }

  /** When the first task that does not stay was planned. */
  private int comesNext(KeptLot kept) {
    int next = Integer.MAX_VALUE;
    for (Run run : kept.lot().runs()) {
      String id = Tasks.after(run.id(), kept.rest(run).size() + 1);
      next = Math.min(next, tasks.get(id).map(standing::start).orElse(Integer.MAX_VALUE));
    }
    return next;
  }

  private Optional<KeptLot> kept(Lot lot, Predicate<Task> wanted, Map<String, Integer> left) {
    Optional<Task> done = standing.history(Tasks.pour(lot.id()));
    Optional<Task> pour = done.or(() -> pour(lot, wanted, left));
    if (pour.isEmpty()) {
      return Optional.empty();
    }
    Map<String, List<Task>> rest = new HashMap<>();
    List<Run> runs = lot.runs().stream().map(standing::withLosses).toList();
    for (Run run : runs) {
      rest.put(run.id(), rest(lot, run, pour.get(), wanted));
    }
    Lot withLosses = new Lot(lot.id(), lot.mix(), runs, lot.weighOut(), lot.wetGrams());
    return Optional.of(new KeptLot(withLosses, pour.get(), rest, done.isPresent()));
  }

  private Optional<Task> pour(Lot lot, Predicate<Task> wanted, Map<String, Integer> left) {
    Task pour = tasks.get(Tasks.pour(lot.id())).orElseThrow();
    if (!pins.present().contains(lot.id()) && !isWanted(pour, wanted)) {
      return Optional.empty();
    }
    boolean can = canStay(pour, TaskMinutes.pour(standing.book(), lot)) && isWhole(lot, pour);
    for (Run run : lot.runs()) {
      boolean needed = left.getOrDefault(run.piece(), 0) >= run.castings();
      can &= must(needed, pour, "not all of it is needed any more");
    }
    if (!can) {
      return Optional.empty();
    }
    lot.runs().forEach(run -> left.merge(run.piece(), -run.castings(), Integer::sum));
    return Optional.of(pour);
  }

  private List<Task> rest(Lot lot, Run run, Task pour, Predicate<Task> wanted) {
    List<Task> rest = new ArrayList<>();
    Task before = pour;
    boolean lost = Goods.isLost(standing.book(), run);
    boolean goesOn = true;
    for (String id : Tasks.needed(standing.book(), run)) {
      Optional<Task> done = standing.history(id);
      boolean needed = !lost || done.isPresent() || rest.isEmpty();
      Optional<Task> next = goesOn && needed ? done.or(() -> tasks.get(id)) : Optional.empty();
      if (next.isPresent() && done.isEmpty()) {
        boolean asked = isWanted(next.get(), wanted);
        boolean stays = asked && follows(lot, run, rest.size() + 1, before, next.get());
        next = stays ? next : Optional.empty();
      } else if (!goesOn && needed) {
        tasks
            .get(id)
            .filter(task -> isWanted(task, wanted))
            .ifPresent(late -> must(false, late, "the task before it has moved"));
      }
      goesOn &= next.isPresent();
      if (next.isPresent()) {
        rest.add(next.get());
        before = next.get();
      }
    }
    return rest;
  }

  private boolean isWanted(Task task, Predicate<Task> wanted) {
    return wanted.test(planned.get(Tasks.idOf(task)).orElseThrow());
  }

  private boolean must(boolean holds, Task task, String reason) {
    if (!holds) {
      reasons.putIfAbsent(Tasks.idOf(task), reason);
    }
    return holds;
  }

  /** Whether a task to come can be where it is planned, whatever comes before it. */
  private boolean canStay(Task task, int minutes) {
    int start = standing.start(task);
    if (!must(start >= standing.now(), task, "it has not been reported to have begun by now")) {
      return false;
    }
    int who = person(task.person());
    Calendar calendar = hours.get(who);
    int worked = calendar.worked(start);
    boolean open =
        worked + minutes <= calendar.workingMinutes()
            && calendar.startOf(worked) == start
            && calendar.endOf(worked + minutes) == standing.end(task)
            && calendar.spells(worked, minutes).size() == task.spells().size();
    String name = standing.book().people().get(who).name();
    return must(open, task, name + " is not there for it then") && isFree(task, name);
  }

  private boolean isFree(Task task, String name) {
    boolean free =
        standing.history().values().stream()
            .filter(one -> one.begun() && one.person().equals(task.person()))
            .noneMatch(
                one ->
                    standing.start(task) < standing.end(one)
                        && standing.start(one) < standing.end(task));
    return must(free, task, name + " is still at something else then");
  }

  /** Whether enough whole units of every form that has broken are free for a pour. */
  private boolean isWhole(Lot lot, Task pour) {
    boolean whole = true;
    for (History.Broken broken : standing.broken()) {
      int at = standing.start(pour);
      int used = used(broken.form(), at, lot);
      int gone =
          standing.broken().stream()
              .filter(one -> one.form().equals(broken.form()) && one.isAt(pour.start()))
              .mapToInt(one -> one.units().size())
              .sum();
      int own = lot.runs().stream().mapToInt(run -> units(run, broken.form())).sum();
      int count = standing.book().form(broken.form()).count();
      String name = standing.book().form(broken.form()).name();
      whole &= must(own == 0 || used + gone + own <= count, pour, "no whole " + name + " is free");
    }
    return whole;
  }

  /** Units of a form that other lots hold at a minute, as planned. */
  private int used(String form, int at, Lot besides) {
    int used = 0;
    for (Lot lot : standing.present().lots()) {
      int pour = start(lot);
      for (Run run : lot.runs()) {
        boolean later = lot.id().equals(besides.id()) || pour > at;
        Optional<Task> demould = standing.history(Tasks.after(run.id(), 1));
        int out =
            demould
                .or(() -> tasks.get(Tasks.after(run.id(), 1)))
                .map(standing::end)
                .orElse(Integer.MAX_VALUE);
        boolean overdue = demould.isEmpty() && out <= standing.now();
        used += !later && (at < out || overdue) ? units(run, form) : 0;
      }
    }
    return used;
  }

  private int units(Run run, String form) {
    Mould mould = standing.book().mould(standing.book().piece(run.piece()).mould());
    return run.castings()
        * mould.forms().stream()
            .filter(use -> use.form().equals(form))
            .mapToInt(FormUse::count)
            .sum();
  }

  /** Whether the task after so many others can be where it is planned, behind the one before it. */
  private boolean follows(Lot lot, Run run, int before, Task previous, Task task) {
    if (!canStay(task, TaskMinutes.after(standing.book(), run, before))) {
      return false;
    }
    Piece piece = standing.book().piece(run.piece());
    int from = standing.end(previous);
    if (before == 1) {
      Mould mould = standing.book().mould(piece.mould());
      int wash = standing.book().mix(lot.mix()).washMinutes();
      return waited(task, Chains.ROOM, from - wash, mould.setHours(), mould.setAtMostHours());
    }
    After after = piece.route().get(before - 2).after();
    int clock = after.kind() == WaitKind.CURE ? Chains.ROOM : Chains.WALL;
    List<String> by = piece.route().get(before - 2).by();
    return waited(task, clock, from, after.hours(), after.atMostHours())
        && must(by.isEmpty() || by.contains(task.person()), task, "somebody else has to do it");
  }

  private boolean waited(Task task, int clock, int from, double hours, OptionalDouble atMost) {
    int start = standing.start(task);
    boolean late = start - from > Chains.minutesOfAtMost(atMost).orElse(Integer.MAX_VALUE);
    return must(
            clocks.get(clock).end(from, hours) <= start,
            task,
            "the wait before it is not over by then")
        && must(!late || isKnown(task), task, "the wait before it would be too long");
  }

  /** Whether the plan says already that a task comes too late, as nothing could help it. */
  private boolean isKnown(Task task) {
    return standing.present().history().map(History::exceeded).orElse(List.of()).stream()
        .anyMatch(one -> one.task().equals(task.id()));
  }

  private int person(String id) {
    for (int i = 0; i < standing.book().people().size(); i++) {
      if (standing.book().people().get(i).id().equals(id)) {
        return i;
      }
    }
    throw new IllegalArgumentException("nobody is \"" + id + "\"");
  }
}
