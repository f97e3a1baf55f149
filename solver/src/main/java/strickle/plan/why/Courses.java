package strickle.plan.why;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Ready;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** Reads the runs of a plan with their tasks. */
final class Courses {

  /** What a task is of: the pour of a lot, or a numbered task of a run (the demould is 1). */
  private record Place(String of, int stage) {}

  private final Book book;
  private final Moments moments;
  private final Map<Place, Placed> tasks = new HashMap<>();
  private final Map<String, Integer> ready = new HashMap<>();
  private final Set<Placed> begun = Collections.newSetFromMap(new IdentityHashMap<>());

  private Courses(Book book, Plan plan, Moments moments) {
    this.book = book;
    this.moments = moments;
    for (Task task : plan.tasks()) {
      Placed placed = placed(task);
      tasks.put(place(task), placed);
      if (task.isHistory()) {
        begun.add(placed);
      }
    }
    for (Ready one : plan.ready()) {
      ready.put(one.run(), moments.minute(one.at()));
    }
  }

  /**
   * Every run of a plan.
   *
   * @throws IllegalArgumentException when the plan is not one of this book or lacks a task
   */
  static List<Course> of(Book book, Plan plan, Moments moments) {
    Courses courses = new Courses(book, plan, moments);
    List<Course> all = new ArrayList<>();
    for (Lot lot : plan.lots()) {
      lot.runs().forEach(run -> all.add(courses.course(lot, run)));
    }
    return List.copyOf(all);
  }

  private Course course(Lot lot, Run run) {
    Piece piece = book.piece(run.piece());
    List<Placed> own = new ArrayList<>(List.of(task(new Place(lot.id(), Chain.POUR))));
    boolean lost = run.scrapped() > 0 && !ready.containsKey(run.id());
    for (int stage = Chain.DEMOULD; stage <= piece.route().size() + 1; stage++) {
      Place place = new Place(run.id(), stage);
      if (!lost || tasks.containsKey(place)) {
        own.add(task(place));
      }
    }
    if (!lost && !ready.containsKey(run.id())) {
      throw unfit("no moment at which run " + run.id() + " is ready");
    }
    int at = lost ? own.get(own.size() - 1).end() : ready.get(run.id());
    int done = (int) IntStream.range(0, own.size()).filter(i -> begun.contains(own.get(i))).count();
    boolean settled = done > 0 || settled(own.get(Chain.POUR));
    Chain chain = Chain.of(book, piece, run.castings());
    Chain gone = lost ? chain.endingWith(own.size()) : chain;
    return new Course(lot.id(), run.id(), gone, settled, own, at, done, run.scrapped());
  }

  /** A pin settles the whole lot that is poured there and then. */
  private boolean settled(Placed pour) {
    return book.pins().stream()
        .filter(pin -> pin.person().equals(pour.person()))
        .anyMatch(pin -> moments.minute(pin.start()) == pour.start());
  }

  private Placed task(Place place) {
    Placed task = tasks.get(place);
    if (task == null) {
      String what = place.stage() == Chain.POUR ? "pour" : "task " + place.stage();
      throw unfit("no " + what + " of " + place.of());
    }
    return task;
  }

  private static Place place(Task task) {
    return task.kind() == TaskKind.POUR
        ? new Place(task.lot(), Chain.POUR)
        : new Place(task.run().orElseThrow(), task.step().orElse(0) + 1);
  }

  /** The task, done by somebody the book knows. */
  private Placed placed(Task task) {
    int start = moments.minute(task.start());
    return new Placed(
        book.person(task.person()).id(), start, moments.minute(task.end()), (int) task.minutes());
  }

  private static IllegalArgumentException unfit(String what) {
    return new IllegalArgumentException(
        "the plan has " + what + "; read it with its own book, and have it audited first");
  }
}
