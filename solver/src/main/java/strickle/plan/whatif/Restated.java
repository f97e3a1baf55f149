package strickle.plan.whatif;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.WaitKind;
import strickle.cure.RoomPace;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.PlanWait;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Wait;

/**
 * A plan said again for a changed book: nobody does anything else, but a warmer room cures sooner.
 */
final class Restated {

  /** A wait by what a plan says of it. */
  private record Begun(String run, PlanWait kind, Instant from) {}

  private final Book book;
  private final RoomPace pace;
  private final Map<Begun, Double> hours = new HashMap<>();

  private Restated(Book book, Plan plan) {
    this.book = book;
    this.pace = RoomPace.of(book.studio().climate(), book.studio().timeZone());
    Map<String, Task> tasks = new HashMap<>();
    plan.tasks().forEach(task -> tasks.put(key(task), task));
    for (Lot lot : plan.lots()) {
      Task pour = tasks.get(lot.id());
      lot.runs().forEach(run -> note(run, pour, tasks));
    }
  }

  /**
   * The plan with its sets and cures as long as they take in the book's room, and so with every
   * right to be audited against that book.
   */
  static Plan of(Book book, Plan plan) {
    Restated restated = new Restated(book, plan);
    List<Wait> waits = new ArrayList<>();
    plan.waits().forEach(wait -> waits.add(restated.again(wait)));
    return new Plan(
        plan.book(),
        plan.from(),
        plan.seed(),
        plan.coverPercent(),
        plan.orderingFrom(),
        plan.lots(),
        plan.tasks(),
        waits,
        plan.ready(),
        plan.orders(),
        plan.totals(),
        plan.history());
  }

  private static String key(Task task) {
    return task.kind() == TaskKind.POUR
        ? task.lot()
        : key(task.run().orElseThrow(), task.step().orElse(0));
  }

  /** The demould is step 0. */
  private static String key(String run, int step) {
    return run + "/" + step;
  }

  private void note(Run run, Task pour, Map<String, Task> tasks) {
    Piece piece = book.piece(run.piece());
    int wash = book.mix(piece.mix()).washMinutes();
    Instant set = pour.end().minusMinutes(wash).toInstant();
    hours.put(new Begun(run.id(), PlanWait.SET, set), book.mould(piece.mould()).setHours());
    for (int i = 0; i < piece.route().size(); i++) {
      Step step = piece.route().get(i);
      if (step.after().kind() == WaitKind.CURE) {
        // A run of which nothing is left ends early.
        Optional.ofNullable(tasks.get(key(run.id(), i)))
            .map(before -> new Begun(run.id(), PlanWait.CURE, before.end().toInstant()))
            .ifPresent(begun -> hours.put(begun, step.after().hours()));
      }
    }
  }

  private Wait again(Wait wait) {
    Double least = hours.get(new Begun(wait.run(), wait.kind(), wait.from().toInstant()));
    if (least == null) {
      return wait;
    }
    Instant over = pace.end(wait.from().toInstant(), least);
    OffsetDateTime to = over.atZone(book.studio().timeZone()).toOffsetDateTime();
    return new Wait(wait.run(), wait.kind(), wait.from(), to);
  }
}
