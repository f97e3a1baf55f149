package strickle.plan;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.Form;
import strickle.book.Nearest;
import strickle.book.Person;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/** Finds what cannot have happened, each with its path, before anything is laid out anew. */
final class HappeningFaults {

  /** Nobody is away, and nothing broken, for longer than this and then back. */
  static final int MOST_DAYS_AWAY = 1000;

  /** Nothing of a plan is done a year before the plan begins. */
  private static final int MOST_DAYS_BEFORE = 366;

  private final Book book;
  private final Plan present;
  private final List<Happening> happened;
  private final StudioTime time;
  private final int now;
  private final Tasks tasks;
  private final Map<String, Run> runs = new HashMap<>();
  private final Map<String, Lot> lotOfRun = new HashMap<>();
  private final List<Fault> faults = new ArrayList<>();

  HappeningFaults(
      Book book, Plan present, List<Happening> happened, StudioTime time, int nowMinute) {
    this.book = book;
    this.present = present;
    this.happened = happened;
    this.time = time;
    this.now = nowMinute;
    this.tasks = new Tasks(present);
    for (Lot lot : present.lots()) {
      for (Run run : lot.runs()) {
        runs.put(run.id(), run);
        lotOfRun.put(run.id(), lot);
      }
    }
  }

  /**
   * Ends the looking.
   *
   * @throws Faulty when anything was found
   */
  void raise() {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** What is named is there, is told once, and lies in the past. */
  void ofNames() {
    Set<Object> told = new HashSet<>();
    for (int i = 0; i < happened.size(); i++) {
      int faultsBefore = faults.size();
      names(i, happened.get(i));
      if (faults.size() == faultsBefore) {
        once(i, happened.get(i), told);
      }
      times(i, happened.get(i));
    }
  }

  private void names(int i, Happening one) {
    List<String> lots = present.lots().stream().map(Lot::id).toList();
    one.lot().ifPresent(lot -> known(i, ".lot", lot, lots, "lot of the plan"));
    one.run().ifPresent(run -> known(i, ".run", run, runs.keySet(), "run of the plan"));
    List<String> people = book.people().stream().map(Person::id).toList();
    one.person().ifPresent(person -> known(i, ".person", person, people, "person of the book"));
    List<String> forms = book.forms().stream().map(Form::id).toList();
    one.form().ifPresent(form -> known(i, ".form", form, forms, "form of the book"));
    Run run = one.run().map(runs::get).orElse(null);
    if (run != null && one.step().isPresent()) {
      int steps = book.piece(run.piece()).route().size();
      must(
          one.step().getAsInt() <= steps,
          i,
          ".step",
          one.step().getAsInt(),
          steps == 0 ? "no step, as its route has none" : "a step from 1 to " + steps);
    }
    if (run != null && one.pieces().isPresent()) {
      int most = Goods.pieces(book, run);
      must(
          one.pieces().getAsInt() <= most,
          i,
          ".pieces",
          one.pieces().getAsInt(),
          "at most " + most + ", all there are");
    }
  }

  private void known(int i, String field, String id, Collection<String> ids, String what) {
    if (!ids.contains(id)) {
      String near = Nearest.to(id, ids).map(one -> "\"" + one + "\"").orElse("the id of a " + what);
      must(false, i, field, "\"" + id + "\"", near);
    }
  }

  private void once(int i, Happening one, Set<Object> told) {
    Object what =
        switch (one.kind()) {
          case POURED, DEMOULDED, STEP -> one.task();
          case SCRAPPED -> List.of(one.run().orElseThrow());
          case AWAY, BROKEN, BACK, MENDED -> one;
        };
    must(told.add(what), i, "", "told a second time", "everything once");
    if (one.isTask()) {
      Optional<Task> planned = tasks.get(one.task());
      must(planned.isPresent(), i, "", "a task the plan does not have", "one that it has");
      planned.filter(Task::done).ifPresent(done -> already(i, one, done));
    }
    int lost = one.run().map(run -> runs.get(run).scrapped()).orElse(0);
    one.pieces()
        .ifPresent(
            pieces ->
                must(pieces >= lost, i, ".pieces", pieces, lost + " or more, as the plan has it"));
  }

  /** What the plan knows to be done may be told again, if it is told alike. */
  private void already(int i, Happening one, Task done) {
    boolean same =
        one.person().orElseThrow().equals(done.person())
            && time.minute(one.start().orElseThrow()) == minute(done.start())
            && one.end().isPresent()
            && time.minute(one.end().get()) == minute(done.end());
    must(
        same,
        i,
        "",
        "what is done already",
        "nothing, or the same: by "
            + done.person()
            + " from "
            + done.start().toLocalDateTime()
            + " to "
            + done.end().toLocalDateTime());
  }

  private long minute(OffsetDateTime at) {
    return time.minute(at.toInstant());
  }

  private void times(int i, Happening one) {
    one.start().ifPresent(start -> notToCome(i, ".start", start));
    one.start().ifPresent(start -> notLongAgo(i, ".start", start));
    one.from().ifPresent(from -> notLongAgo(i, ".from", from));
    if (one.kind() == HappeningKind.BROKEN) {
      notToCome(i, ".from", one.from().orElseThrow());
    }
    one.end().ifPresent(end -> notToCome(i, ".end", end));
    one.to().ifPresent(to -> notLong(i, one.from().orElseThrow(), to));
  }

  private void notLong(int i, LocalDateTime from, LocalDateTime to) {
    LocalDateTime most = from.plusDays(MOST_DAYS_AWAY);
    must(!to.isAfter(most), i, ".to", to, "a time not after " + most);
  }

  private void notLongAgo(int i, String field, LocalDateTime at) {
    must(!isLongAgo(present, at), i, field, at, "a time not before " + first(present));
  }

  /** Whether something is so long before a plan begins that it cannot be part of it. */
  static boolean isLongAgo(Plan plan, LocalDateTime at) {
    return at.isBefore(first(plan));
  }

  /** The first time that can be part of a plan. */
  static LocalDateTime first(Plan plan) {
    return plan.from().toLocalDateTime().minusDays(MOST_DAYS_BEFORE);
  }

  private void notToCome(int i, String field, LocalDateTime at) {
    must(time.minute(at) <= now, i, field, at, "a time that is over by now, " + time.local(now));
  }

  /** Nothing happens before what has to come before it. */
  void ofOrder(Map<String, Task> history) {
    for (int i = 0; i < happened.size(); i++) {
      Happening one = happened.get(i);
      if (one.isTask() && one.kind() != HappeningKind.POURED) {
        behind(i, one, history);
      } else if (one.kind() == HappeningKind.SCRAPPED) {
        Lot lot = lotOfRun.get(one.run().orElseThrow());
        boolean poured = history.containsKey(Tasks.pour(lot.id()));
        must(poured, i, ".run", "a run that is not poured", "one that is, or \"poured\" as well");
      }
    }
  }

  private void behind(int i, Happening one, Map<String, Task> history) {
    Run run = runs.get(one.run().orElseThrow());
    Lot lot = lotOfRun.get(run.id());
    int step = one.step().orElse(0);
    String before = step == 0 ? Tasks.pour(lot.id()) : Tasks.after(run.id(), step);
    Task task = history.get(before);
    if (task == null || !task.done()) {
      must(false, i, "", "a task whose forerunner " + before + " is not done", "that told as well");
    } else {
      int wash = step == 0 ? book.mix(lot.mix()).washMinutes() : 0;
      long earliest = minute(task.end()) - wash;
      LocalDateTime start = one.start().orElseThrow();
      must(
          time.minute(start) >= earliest,
          i,
          ".start",
          start,
          time.local(earliest) + " or later, when " + before + " was done");
    }
  }

  /** Nobody was in two places at once. */
  void ofPeople(Map<String, Task> history) {
    faults.addAll(HandsFull.faults(happened, history, time, now));
  }

  /** Nobody used more forms or places than there are. */
  void ofThings(Map<String, Task> history, Map<String, Integer> scrapped) {
    for (int i = 0; i < happened.size(); i++) {
      Happening one = happened.get(i);
      if (one.kind() == HappeningKind.BROKEN) {
        String form = one.form().orElseThrow();
        int all =
            happened.stream()
                .filter(o -> o.form().equals(one.form()) && o.to().isEmpty())
                .mapToInt(o -> (o.kind() == HappeningKind.BROKEN ? 1 : -1) * o.count().orElse(0))
                .sum();
        must(
            all <= book.form(form).count(),
            i,
            ".count",
            all + " units of form \"" + form + "\" broken",
            "at most " + book.form(form).count() + ", all there are");
      }
    }
    ThingsInUse things = new ThingsInUse(book, present, time, history, scrapped);
    for (int i = 0; i < happened.size(); i++) {
      int place = i;
      if (happened.get(i).isTask()) {
        things
            .tooMany(happened.get(i).task())
            .ifPresent(what -> must(false, place, ".start", what.found(), what.right()));
      }
    }
  }

  /** Somebody who is told to be back was to be away then. */
  void ofBack(int i, boolean wasAway) {
    Happening one = happened.get(i);
    String found = one.from().orElseThrow() + ", when " + one.person().orElseThrow();
    must(wasAway, i, ".from", found + " was not to be away", "a time of an absence");
  }

  /** As many units as are told to be mended were broken. */
  void ofMended(int i, int broken) {
    Happening one = happened.get(i);
    int count = one.count().orElseThrow();
    String found = count + " of form \"" + one.form().orElseThrow() + "\" mended";
    String right = "at most " + broken + ", all that were broken then";
    must(count <= broken, i, ".count", found, right);
  }

  private void must(boolean holds, int i, String field, Object found, String right) {
    if (!holds) {
      faults.add(new Fault("$.happened[" + i + "]" + field, found.toString(), right));
    }
  }
}
