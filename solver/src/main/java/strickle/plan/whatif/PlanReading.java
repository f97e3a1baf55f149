package strickle.plan.whatif;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import strickle.book.Book;
import strickle.book.Line;
import strickle.book.Piece;
import strickle.book.RestsOn;
import strickle.plan.FormHold;
import strickle.plan.Lot;
import strickle.plan.OrderOutcome;
import strickle.plan.Plan;
import strickle.plan.Planning;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Wait;

/** A plan read by lots, runs and their tasks, in minutes of the epoch. */
final class PlanReading {

  private static final int MINUTE_SECONDS = 60;

  /**
   * Something held by a run.
   *
   * @param id the form or station
   * @param units units or places
   * @param from first minute
   * @param to first minute no more
   */
  record Holding(String id, int units, long from, long to) {}

  private final Book book;
  private final Plan plan;
  private final Set<String> pressing = new HashSet<>();
  private final Map<String, List<Task>> tasksOfRun = new HashMap<>();
  private final Map<String, Task> pourOfLot = new HashMap<>();
  private final Map<String, Long> readyOfRun = new HashMap<>();

  /** Reads a plan of a book that the audit finds nothing in. */
  PlanReading(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    for (OrderOutcome outcome : plan.orders()) {
      boolean counts = book.order(outcome.order()).weight().signum() > 0;
      if (outcome.lateMinutes() > 0 && counts) {
        book.order(outcome.order()).lines().stream().map(Line::piece).forEach(pressing::add);
      }
    }
    for (Ready ready : plan.ready()) {
      readyOfRun.put(ready.run(), minute(ready.at()));
    }
    for (Task task : plan.tasks()) {
      if (task.kind() == TaskKind.POUR) {
        pourOfLot.put(task.lot(), task);
      } else {
        tasksOfRun.computeIfAbsent(task.run().orElseThrow(), run -> new ArrayList<>()).add(task);
      }
    }
    tasksOfRun.values().forEach(tasks -> tasks.sort((a, b) -> a.start().compareTo(b.start())));
  }

  static long minute(OffsetDateTime at) {
    return Math.floorDiv(at.toEpochSecond(), MINUTE_SECONDS);
  }

  /** The minute of a local time of the studio, given as minutes after a date's midnight. */
  long minute(LocalDate date, int minuteOfDay) {
    return minute(
        date.atStartOfDay()
            .plusMinutes(minuteOfDay)
            .atZone(book.studio().timeZone())
            .toOffsetDateTime());
  }

  /** The minute before which nothing new begins. */
  long from() {
    return minute(Planning.begins(plan));
  }

  LocalDate firstDay() {
    return local(Planning.begins(plan));
  }

  /** The day on which the last task ends; the first when there are no tasks. */
  LocalDate lastDay() {
    return plan.tasks().stream()
        .map(task -> local(task.end()))
        .max(LocalDate::compareTo)
        .orElse(firstDay());
  }

  private LocalDate local(OffsetDateTime at) {
    return at.atZoneSameInstant(book.studio().timeZone()).toLocalDate();
  }

  /** Whether a late order whose lateness counts asks for a piece. */
  boolean isPressing(String piece) {
    return pressing.contains(piece);
  }

  /** Everything that is held of forms, by form, in the order of the pours. */
  Map<String, List<Holding>> formHoldings() {
    Map<String, List<Holding>> holdings = new TreeMap<>();
    for (Lot lot : lots()) {
      for (Run run : lot.runs()) {
        for (FormHold hold : run.forms()) {
          add(holdings, hold.form(), hold.units().size(), pourStart(lot), demouldEnd(run));
        }
      }
    }
    return holdings;
  }

  /** Everything that lies at stations, by station. */
  Map<String, List<Holding>> placeHoldings() {
    Map<String, List<Holding>> holdings = new TreeMap<>();
    for (Lot lot : lots()) {
      lot.runs().forEach(run -> addPlaces(run, holdings));
    }
    return holdings;
  }

  private void addPlaces(Run run, Map<String, List<Holding>> holdings) {
    Piece piece = book.piece(run.piece());
    List<Task> tasks = tasksOfRun.getOrDefault(run.id(), List.of());
    for (int i = 1; i < tasks.size(); i++) {
      Optional<RestsOn> rests = piece.route().get(i - 1).restsOn();
      if (rests.isPresent()) {
        boolean last = i == tasks.size() - 1;
        long end = minute(tasks.get(i).end());
        long to = last ? readyOfRun.getOrDefault(run.id(), end) : minute(tasks.get(i + 1).start());
        int pieces = run.castings() * book.mould(piece.mould()).cavities();
        int places = pieces * rests.get().placesEach();
        add(holdings, rests.get().station(), places, minute(tasks.get(i).start()), to);
      }
    }
  }

  /** What is given back already is no matter. */
  private void add(Map<String, List<Holding>> holdings, String id, int units, long from, long to) {
    if (to <= from()) {
      return;
    }
    holdings.computeIfAbsent(id, any -> new ArrayList<>()).add(new Holding(id, units, from, to));
  }

  /** The lots in the order they are poured. */
  List<Lot> lots() {
    return plan.lots().stream().sorted((a, b) -> Long.compare(pourStart(a), pourStart(b))).toList();
  }

  private long pourStart(Lot lot) {
    return minute(pourOfLot.get(lot.id()).start());
  }

  private long demouldEnd(Run run) {
    return minute(tasksOfRun.get(run.id()).get(0).end());
  }

  /** Every task still to come with when it could have begun. */
  List<Queued> queue() {
    List<Queued> queue = new ArrayList<>();
    Map<String, Long> unitFree = new HashMap<>();
    for (Lot lot : lots()) {
      long allowed = from();
      for (Run run : lot.runs()) {
        for (FormHold hold : run.forms()) {
          for (int unit : hold.units()) {
            Long free = unitFree.put(hold.form() + "/" + unit, demouldEnd(run));
            allowed = Math.max(allowed, free == null ? allowed : free);
          }
        }
      }
      boolean presses = lot.runs().stream().anyMatch(run -> isPressing(run.piece()));
      Task pour = pourOfLot.get(lot.id());
      if (!pour.isHistory()) {
        queue.add(new Queued(pour, allowed, minute(pour.start()), List.of(), presses));
      }
      lot.runs().forEach(run -> queueRest(run, pour, queue));
    }
    return queue;
  }

  private void queueRest(Run run, Task pour, List<Queued> queue) {
    Piece piece = book.piece(run.piece());
    Task before = pour;
    for (Task task : tasksOfRun.getOrDefault(run.id(), List.of())) {
      long start = minute(task.start());
      long waited = Math.max(minute(before.end()), waitsOver(run.id(), start));
      long allowed = Math.max(from(), waited);
      List<String> by =
          task.step().isPresent() ? piece.route().get(task.step().getAsInt() - 1).by() : List.of();
      if (!task.isHistory()) {
        queue.add(new Queued(task, allowed, start, by, isPressing(run.piece())));
      }
      before = task;
    }
  }

  private long waitsOver(String run, long start) {
    return plan.waits().stream()
        .filter(wait -> wait.run().equals(run))
        .map(Wait::to)
        .mapToLong(PlanReading::minute)
        .filter(over -> over <= start)
        .max()
        .orElse(0);
  }
}
