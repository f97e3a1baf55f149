package strickle.plan;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.Faulty;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;
import strickle.shop.Calendar;

/** Puts what has happened beside the present plan: how things stand. */
final class StandingReader {

  private final Book book;
  private final Plan present;
  private final List<Happening> happened;
  private final OffsetDateTime nowAt;
  private final StudioTime time;
  private final HappeningFaults faults;
  private final Map<String, Integer> scrapped = new HashMap<>();
  private final Map<String, Task> history = new LinkedHashMap<>();

  private StandingReader(Book book, Plan present, List<Happening> happened, OffsetDateTime now) {
    this.book = book;
    this.present = present;
    this.happened = happened;
    this.nowAt = now;
    this.time = line(book, present, happened);
    this.faults = new HappeningFaults(book, present, happened, time, minute(now));
  }

  /**
   * Reads how things stand.
   *
   * @param present a plan of the book, which may have other orders by now
   * @throws Faulty with everything that cannot have happened, paths beginning with {@code
   *     $.happened[0]}
   */
  static Standing of(Book book, Plan present, List<Happening> happened, OffsetDateTime now) {
    return new StandingReader(book, present, happened, now).read();
  }

  /** A minute line that begins with the plan, or with the first thing that happened before. */
  private static StudioTime line(Book book, Plan present, List<Happening> happened) {
    StudioTime ofPlan = new StudioTime(present.from().toInstant(), book.studio().timeZone());
    Stream<OffsetDateTime> done = present.tasks().stream().filter(Task::isHistory).map(Task::start);
    Stream<OffsetDateTime> told =
        happened.stream()
            .flatMap(one -> one.start().stream())
            .filter(start -> !HappeningFaults.isLongAgo(present, start))
            .map(start -> ofPlan.at(ofPlan.minute(start)));
    OffsetDateTime first =
        Stream.concat(done, told)
            .reduce(present.from(), (one, other) -> other.isBefore(one) ? other : one);
    return new StudioTime(first.toInstant(), book.studio().timeZone());
  }

  private Standing read() {
    faults.ofNames();
    faults.raise();
    for (Lot lot : present.lots()) {
      for (Run run : lot.runs()) {
        if (run.scrapped() > 0) {
          scrapped.put(run.id(), run.scrapped());
        }
      }
    }
    happened.forEach(this::count);
    List<History.Away> away = away();
    Book left = Absences.outOf(book, time, away);
    present.tasks().stream().filter(Task::isHistory).forEach(task -> add(left, task));
    happened.stream().filter(Happening::isTask).forEach(one -> add(left, one));
    faults.ofOrder(history);
    faults.ofPeople(history);
    faults.raise();
    List<History.Broken> broken =
        new Breakages(book, present, happened, history, time, nowAt, faults).all();
    faults.ofThings(history, scrapped);
    faults.raise();
    return new Standing(left, present, time, minute(nowAt), history, scrapped, away, broken);
  }

  private void count(Happening one) {
    one.pieces().ifPresent(lost -> scrapped.merge(one.run().orElseThrow(), lost, Math::max));
  }

  /** Everybody's absences, as far as they are not told to be back before. */
  private List<History.Away> away() {
    List<History.Away> away =
        new ArrayList<>(present.history().map(History::away).orElse(List.of()));
    happened.stream()
        .filter(one -> one.kind() == HappeningKind.AWAY)
        .map(this::away)
        .filter(one -> !away.contains(one))
        .forEach(away::add);
    for (int i = 0; i < happened.size(); i++) {
      if (happened.get(i).kind() == HappeningKind.BACK) {
        back(i, away);
      }
    }
    return away.stream().distinct().toList();
  }

  private History.Away away(Happening one) {
    return new History.Away(
        one.person().orElseThrow(), at(one.from().orElseThrow()), at(one.to().orElseThrow()));
  }

  /** Ends absences where somebody is back; one that has not begun by then is no more. */
  private void back(int i, List<History.Away> away) {
    Happening one = happened.get(i);
    OffsetDateTime at = at(one.from().orElseThrow());
    boolean wasAway = false;
    for (History.Away absence : List.copyOf(away)) {
      boolean own = absence.person().equals(one.person().orElseThrow());
      if (own && !at.isBefore(absence.from()) && !at.isAfter(absence.to())) {
        wasAway = true;
        away.remove(absence);
        if (at.isAfter(absence.from())) {
          away.add(new History.Away(absence.person(), absence.from(), at));
        }
      }
    }
    faults.ofBack(i, wasAway);
  }

  /** What the plan knows already; somebody who was at it still is. */
  private void add(Book left, Task task) {
    history.put(
        Tasks.idOf(task), task.done() ? task : begun(left, task, task.person(), task.start()));
  }

  private void add(Book left, Happening one) {
    Task planned = new Tasks(present).get(one.task()).orElseThrow();
    String person = one.person().orElseThrow();
    OffsetDateTime start = at(one.start().orElseThrow());
    Optional<OffsetDateTime> end = one.end().map(this::at);
    Task task =
        end.map(over -> done(planned, person, start, over))
            .orElseGet(() -> begun(left, planned, person, start));
    history.put(one.task(), task);
  }

  /** A task that is over; where it went as planned, its pauses are those that were planned. */
  private static Task done(Task planned, String person, OffsetDateTime start, OffsetDateTime end) {
    boolean asPlanned =
        planned.person().equals(person)
            && planned.start().isEqual(start)
            && planned.end().isEqual(end);
    List<Spell> spells = asPlanned ? planned.spells() : List.of(new Spell(start, end));
    return with(planned, person, spells, false);
  }

  /**
   * A task somebody is at: it goes on as long as it needs, in their hours if it was begun in them;
   * if that is over already, it is taken to end at any moment.
   */
  private Task begun(Book left, Task planned, String person, OffsetDateTime start) {
    int from = minute(start);
    int needed = needed(planned);
    int now = minute(nowAt);
    Calendar hours = Hours.calendar(left.person(person), time, now + Planning.YEAR_MINUTES);
    List<Spell> spells = new ArrayList<>();
    int worked = hours.worked(from);
    boolean inHours =
        planned.kind() != TaskKind.POUR
            && worked + needed <= hours.workingMinutes()
            && hours.startOf(worked) == from;
    if (inHours) {
      hours.spells(worked, needed).forEach(one -> spells.add(spell(one.start(), one.end())));
    } else {
      spells.add(spell(from, from + needed));
    }
    boolean over = minute(spells.get(spells.size() - 1).end()) <= now;
    return with(planned, person, over ? List.of(spell(from, now + 1)) : spells, true);
  }

  private int needed(Task planned) {
    Lot lot =
        present.lots().stream()
            .filter(one -> one.id().equals(planned.lot()))
            .findFirst()
            .orElseThrow();
    if (planned.run().isEmpty()) {
      return TaskMinutes.pour(book, lot);
    }
    Run run =
        lot.runs().stream()
            .filter(one -> one.id().equals(planned.run().get()))
            .findFirst()
            .orElseThrow();
    return TaskMinutes.after(book, run, planned.step().orElse(0) + 1);
  }

  private static Task with(Task planned, String person, List<Spell> spells, boolean begun) {
    return new Task(
        planned.id(),
        planned.kind(),
        planned.lot(),
        planned.run(),
        planned.step(),
        person,
        spells,
        begun,
        !begun);
  }

  private Spell spell(int start, int end) {
    return new Spell(time.at(start), time.at(end));
  }

  private OffsetDateTime at(LocalDateTime local) {
    return time.at(time.minute(local));
  }

  private int minute(OffsetDateTime at) {
    return (int) time.minute(at.toInstant());
  }
}
