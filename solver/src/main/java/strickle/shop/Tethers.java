package strickle.shop;

import java.util.Arrays;

/**
 * Places jobs whose links go back. Each goes to the first place after those that it has to follow;
 * when that lies after its latest start, the jobs that set it are bound to start later, and they
 * and all that start after them are taken away and placed again, in the order of the list. When
 * that has happened too often, jobs are left too late, so that it shows how far the order is from
 * being a schedule. After its construction it allocates nothing.
 *
 * <p>Source: B. Franck, K. Neumann, C. Schwindt, Truncated branch-and-bound, schedule-construction,
 * and schedule-improvement procedures for resource-constrained project scheduling, OR Spektrum 23
 * (2001) 297-324 (value from memory).
 */
final class Tethers {

  /** A schedule may come apart so many times for each of its tethered jobs. */
  private static final int APART_EACH = 1;

  private static final int UNPLACED = -1;

  private final Tables tables;
  private final Distances distances;
  private final Timetable timetable;
  private final Group group;
  private final Placer placer;
  private final Lots lots;

  private final int[] earliest;
  private final int[] start;
  private final int[] run;

  /** How many of those that a kind follows have no place. */
  private final int[] waitsFor;

  private final int[] inOrder;
  private int asked;
  private int placed;
  private int apart;
  private long placedAgain;
  private int lastEnd;
  private int latest;
  private long tooLate;

  Tethers(Tables tables, Timetable timetable, Group group, Placer placer, Lots lots) {
    this.tables = tables;
    this.distances = tables.distances;
    this.timetable = timetable;
    this.group = group;
    this.placer = placer;
    this.lots = lots;
    int kinds = distances.least.length;
    earliest = new int[kinds];
    start = new int[kinds];
    run = new int[kinds];
    waitsFor = new int[kinds];
    inOrder = new int[distances.tethered];
  }

  /** Begins a schedule with nothing placed. */
  void clear() {
    asked = 0;
    placed = 0;
    apart = 0;
    lastEnd = 0;
    tooLate = 0;
    Arrays.fill(start, UNPLACED);
    Arrays.fill(run, UNPLACED);
    Arrays.fill(waitsFor, 0);
    System.arraycopy(distances.earliest, 0, earliest, 0, earliest.length);
    for (int kind = 0; kind < start.length; kind++) {
      count(kind, 1);
    }
  }

  /**
   * Places the job of a kind that is next in the list, those that had to wait for it, and again
   * what has come apart.
   *
   * @return false when one has no place within the horizon
   */
  boolean place(int kind) {
    inOrder[asked++] = kind;
    int next = next();
    while (next != UNPLACED) {
      if (!placeOne(next)) {
        return false;
      }
      next = next();
    }
    return true;
  }

  /** When the last of those that have been placed ends. */
  int lastEnd() {
    return lastEnd;
  }

  /** How many times, so far, as many as there are have been placed again. */
  long schedulesAgain() {
    return distances.tethered == 0 ? 0 : placedAgain / distances.tethered;
  }

  /**
   * How far the last order was from being a schedule: how many jobs have no place within the
   * horizon, and after that by how many minutes in all the others are too late.
   */
  long missing() {
    return (((long) distances.tethered - placed) << Integer.SIZE) + tooLate;
  }

  /**
   * Notes in which run each job is and when it is done, once all have been asked for.
   *
   * @return whether none is too late
   */
  boolean finish(int[] runOfJob, int[] jobOfRun) {
    for (int at = 0; at < asked; at++) {
      int kind = inOrder[at];
      int job = tables.jobFirst[kind];
      runOfJob[job] = run[kind];
      jobOfRun[run[kind]] = job;
      timetable.done(run[kind], timetable.end[timetable.runSlot[run[kind]]] + tables.tail[kind]);
    }
    return tooLate == 0;
  }

  /** The first in the list that has no place and follows none that has none. */
  private int next() {
    for (int at = 0; at < asked; at++) {
      int kind = inOrder[at];
      if (start[kind] == UNPLACED && waitsFor[kind] == 0) {
        return kind;
      }
    }
    return UNPLACED;
  }

  private boolean placeOne(int kind) {
    if (run[kind] == UNPLACED) {
      lots.begin(tables.jobFirst[kind]);
      timetable.lots++;
      run[kind] = lots.firstRun();
    } else {
      placedAgain++;
    }
    group.ofClaim(run[kind], 0, bounds(kind));
    if (!placer.place(group, tables.shop.horizonMinutes())) {
      return false;
    }
    int slot = timetable.runSlot[run[kind]];
    if (timetable.start[slot] > latest) {
      if (apart < APART_EACH * distances.tethered) {
        takeApart(kind, timetable.start[slot]);
        return true;
      }
      tooLate += timetable.start[slot] - latest;
    }
    start[kind] = timetable.start[slot];
    lastEnd = Math.max(lastEnd, timetable.end[slot]);
    placed++;
    count(kind, -1);
    return true;
  }

  /** The earliest start of a kind among those that are placed; its latest start is kept. */
  private int bounds(int kind) {
    int from = earliest[kind];
    latest = Integer.MAX_VALUE;
    for (int at = 0; at < asked; at++) {
      int other = inOrder[at];
      if (start[other] != UNPLACED) {
        from = Math.max(from, start[other] + distances.least[other][kind]);
        latest = Math.min(latest, latest(kind, other));
      }
    }
    return from;
  }

  /** Where a distance is none, this is later than any start. */
  private int latest(int kind, int other) {
    return start[other] - distances.least[kind][other];
  }

  /** Takes away what keeps a kind from starting at the first minute there is room for it. */
  private void takeApart(int kind, int wanted) {
    placer.takeBack(group, 1, 0);
    apart++;
    int first = Integer.MAX_VALUE;
    for (int at = 0; at < asked; at++) {
      int other = inOrder[at];
      if (start[other] != UNPLACED && latest(kind, other) < wanted) {
        bind(other, wanted + distances.least[kind][other]);
        first = Math.min(first, start[other]);
      }
    }
    for (int at = 0; at < asked; at++) {
      int other = inOrder[at];
      if (start[other] > first || (start[other] != UNPLACED && start[other] < earliest[other])) {
        takeAway(other);
      }
    }
  }

  /** Lets a kind, and with it whatever follows, start no earlier than a minute. */
  private void bind(int kind, int minute) {
    for (int other = 0; other < earliest.length; other++) {
      earliest[other] = Math.max(earliest[other], minute + distances.least[kind][other]);
    }
  }

  private void takeAway(int kind) {
    group.ofClaim(run[kind], 0, 0);
    placer.takeBack(group, 1, 0);
    start[kind] = UNPLACED;
    placed--;
    count(kind, 1);
  }

  private void count(int kind, int more) {
    for (int follower : distances.followers[kind]) {
      waitsFor[follower] += more;
    }
  }
}
