package strickle.plan.why;

import java.util.List;
import strickle.book.Piece;

/**
 * A run where it is planned.
 *
 * @param lot the lot it is poured from
 * @param run its id
 * @param chain what it has to go through, as if poured as a lot of its own
 * @param settled whether a pin says when it is poured
 * @param tasks pour, demould and steps, in order
 * @param ready the minute it is ready
 * @param done how many of the tasks, from the pour on, have at least begun and stay as they are
 * @param scrapped how many of its pieces are lost
 */
record Course(
    String lot,
    String run,
    Chain chain,
    boolean settled,
    List<Placed> tasks,
    int ready,
    int done,
    int scrapped) {

  /** A run of which nothing has happened yet. */
  Course(String lot, String run, Chain chain, boolean settled, List<Placed> tasks, int ready) {
    this(lot, run, chain, settled, tasks, ready, 0, 0);
  }

  /** The tasks that stay wherever the others go: what has happened, or else its pour. */
  List<Placed> begun() {
    return tasks.subList(0, Math.max(1, done));
  }

  Piece piece() {
    return chain.piece();
  }

  Placed task(int stage) {
    return tasks.get(stage);
  }

  boolean is(Course other) {
    return run.equals(other.run);
  }

  /** The same run with other tasks; poured apart from its lot unless its pour is settled. */
  Course moved(List<Placed> otherTasks) {
    String from = settled ? lot : run;
    return new Course(
        from, run, chain, settled, otherTasks, readyAfter(otherTasks), done, scrapped);
  }

  /** The same run with other tasks, in its lot. */
  Course with(List<Placed> otherTasks) {
    return new Course(lot, run, chain, settled, otherTasks, readyAfter(otherTasks), done, scrapped);
  }

  /** The same run with no pin on it. */
  Course unsettled() {
    return new Course(lot, run, chain, false, tasks, ready, done, scrapped);
  }

  private int readyAfter(List<Placed> otherTasks) {
    return otherTasks.get(chain.last()).end() + chain.finalDryMinutes();
  }
}
