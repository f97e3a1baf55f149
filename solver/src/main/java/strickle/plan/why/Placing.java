package strickle.plan.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Places a run as early as it can go on a floor it is not on, with all that is there left as it is.
 * Each stage is put at the first place after the one before it; when a most-wait or something taken
 * then does not work out, the earlier stage's bound is raised and everything from there is placed
 * again. Bounds only grow, and only as far as they must, so this ends at the earliest places.
 */
final class Placing {

  /** So many places are tried before it is given up. */
  private static final int MOST_TRIES = 20_000;

  private static final int FAILED = -1;

  private final Floor floor;
  private final Chain chain;
  private final int kept;
  private final List<Placed> tasks;
  private final int[] startFrom;
  private final int[] endFrom;

  private Placing(Floor floor, Chain chain, List<Placed> kept) {
    this.floor = floor;
    this.chain = chain;
    this.kept = kept.size();
    this.tasks = new ArrayList<>(kept);
    this.startFrom = new int[chain.stages().size()];
    this.endFrom = new int[chain.stages().size()];
  }

  /**
   * The tasks of a run from pour to last step.
   *
   * @param kept the first tasks, which stay where they are
   * @param notBefore when the first task after them may start at the earliest
   * @return nothing when it fits nowhere
   */
  static Optional<List<Placed>> place(Floor floor, Chain chain, List<Placed> kept, int notBefore) {
    Placing placing = new Placing(floor, chain, kept);
    int stage = kept.size();
    if (stage < placing.startFrom.length) {
      placing.startFrom[stage] = notBefore;
    }
    for (int tries = 0; tries < MOST_TRIES && stage != FAILED; tries++) {
      if (stage > chain.last()) {
        return Optional.of(List.copyOf(placing.tasks));
      }
      stage = placing.placeOne(stage);
    }
    return Optional.empty();
  }

  /** Places one stage and says which comes next: the one after it, or one that has to move. */
  private int placeOne(int stage) {
    trimTo(stage);
    Stage what = chain.stages().get(stage);
    int from = startFrom[stage];
    int latest = Integer.MAX_VALUE;
    if (stage > 0) {
      int waits = chain.waitFrom(stage, tasks.get(stage - 1));
      from = Math.max(from, floor.over(what, waits));
      latest = what.latest(waits);
    }
    Optional<Placed> place = best(what, from, endFrom[stage], latest);
    if (place.isEmpty()) {
      return FAILED;
    }
    if (place.get().start() > latest) {
      return moveBefore(stage, place.get().start() - latest);
    }
    tasks.add(place.get());
    return giveBack(stage);
  }

  private void trimTo(int count) {
    while (tasks.size() > count) {
      tasks.remove(tasks.size() - 1);
    }
  }

  /** Of the places that are not too late the one that ends first, or else the one soonest begun. */
  private Optional<Placed> best(Stage what, int from, int endsFrom, int latest) {
    Placed best = null;
    for (Hands hands : floor.whoMay(what)) {
      Placed place = hands.earliest(from, endsFrom, what.minutes(), what.whole()).orElse(null);
      if (place != null && (best == null || isBetter(place, best, latest))) {
        best = place;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isBetter(Placed one, Placed other, int latest) {
    if (one.start() <= latest) {
      return other.start() > latest || one.end() < other.end();
    }
    return other.start() > latest && one.start() < other.start();
  }

  /** The stage came too late by so much: the one before it has to end so much later. */
  private int moveBefore(int stage, int minutes) {
    int before = stage - 1;
    if (before < kept) {
      return FAILED;
    }
    endFrom[before] = tasks.get(before).end() + minutes;
    return before;
  }

  /** Looks whether what this stage gives back was free since it was taken. */
  private int giveBack(int stage) {
    int ready = tasks.get(stage).end() + chain.finalDryMinutes();
    for (Need need : chain.needs()) {
      boolean closes = need.closes() == stage || (stage == chain.last() && need.closes() > stage);
      if (closes) {
        int taken = need.from(tasks);
        int given = need.closes() == stage ? givenAt(need, stage) : ready;
        int clear = floor.usage(need.thing()).clearOf(taken, given, need.units());
        if (clear > taken) {
          return moveOpener(need.opens(), clear);
        }
      }
    }
    return stage + 1;
  }

  private int givenAt(Need need, int stage) {
    return need.atEnd() ? tasks.get(stage).end() : tasks.get(stage).start();
  }

  private int moveOpener(int opener, int from) {
    if (opener < kept) {
      return FAILED;
    }
    startFrom[opener] = from;
    return opener;
  }
}
