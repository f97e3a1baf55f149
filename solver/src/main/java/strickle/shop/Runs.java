package strickle.shop;

import java.util.Arrays;

/**
 * How far each run has come along its chain: its claims are placed one after the other, as soon as
 * the list has asked for them.
 */
final class Runs {

  /** Where a job's run is not known yet. */
  static final int UNPLACED = -1;

  private final Tables tables;
  private final Timetable timetable;
  private final Group group;
  private final Placer placer;
  private final Settled settled;
  private final Loose loose;
  private final Waiting waiting;
  private final int[] askedOfRun;
  private final int[] nextSegment;
  private final Clock[] clocks;
  private boolean again;

  /** The run of each job, or {@link #UNPLACED}. */
  final int[] ofJob;

  /** One of the jobs of each run. */
  final int[] jobOf;

  /** The claims of each job that the list has asked for, as bits. */
  final int[] asked;

  /** When all that is placed has ended. */
  int lastEnd;

  Runs(
      Tables tables,
      Timetable timetable,
      Group group,
      Placer placer,
      Settled settled,
      Loose loose,
      Waiting waiting) {
    this.tables = tables;
    this.timetable = timetable;
    this.group = group;
    this.placer = placer;
    this.settled = settled;
    this.loose = loose;
    this.waiting = waiting;
    this.askedOfRun = new int[tables.jobs];
    this.nextSegment = new int[tables.jobs];
    this.clocks = tables.shop.clocks().toArray(Clock[]::new);
    this.ofJob = new int[tables.jobs];
    this.jobOf = new int[tables.jobs];
    this.asked = new int[tables.jobs];
  }

  void clear() {
    Arrays.fill(ofJob, UNPLACED);
    Arrays.fill(asked, 0);
    lastEnd = 0;
    again = false;
    loose.clear();
  }

  /** Writes down how far the first {@code runs} runs, which are all there are, have come. */
  void save(Memo memo, int runs) {
    memo.put(lastEnd);
    memo.put(ofJob, ofJob.length);
    memo.put(asked, asked.length);
    memo.put(jobOf, runs);
    memo.put(askedOfRun, runs);
    memo.put(nextSegment, runs);
  }

  void load(Memo memo, int runs) {
    lastEnd = memo.take();
    memo.take(ofJob, ofJob.length);
    memo.take(asked, asked.length);
    memo.take(jobOf, runs);
    memo.take(askedOfRun, runs);
    memo.take(nextSegment, runs);
    again = false;
  }

  /** Whether what has no place now has one when all is placed again from the beginning. */
  boolean again() {
    return again;
  }

  /**
   * Notes that the list asks for a claim of a job that has a run, and places what can be placed.
   *
   * @return whether all of it found a place
   */
  boolean ask(int run, int segment) {
    askedOfRun[run] |= 1 << segment;
    return advance(run);
  }

  /** Keeps a settled lot that has been placed. */
  void keepSettled(int fixed, Lots lots) {
    keep(lots);
    for (int run = settled.firstRun(fixed); run < timetable.runs; run++) {
      nextSegment[run] = settled.claims(run);
      finishIfDone(run);
    }
  }

  /**
   * Keeps a lot that has been placed, and places the later claims asked for before.
   *
   * @return whether all of them found a place
   */
  boolean keepLot(Lots lots) {
    int first = lots.firstRun();
    for (int run = first; run < timetable.runs; run++) {
      timetable.repeatFirst(first, run);
      nextSegment[run] = 1;
    }
    keep(lots);
    boolean placed = true;
    for (int run = first; run < timetable.runs && placed; run++) {
      finishIfDone(run);
      placed = advance(run);
    }
    return placed;
  }

  /**
   * Places what was let go of runs that hold what a lot of the runs from one on needs.
   *
   * @return whether all of it found a place
   */
  boolean clearTheWay(int firstRun) {
    boolean placed = true;
    int run = loose.inTheWay(firstRun);
    while (run >= 0 && placed) {
      placed = placeClaim(run);
      run = loose.inTheWay(firstRun);
    }
    return placed;
  }

  private void keep(Lots lots) {
    timetable.lots++;
    for (int run = lots.firstRun(); run < timetable.runs; run++) {
      askedOfRun[run] = 0;
    }
    for (int member = 0; member < lots.count; member++) {
      int job = lots.members[member];
      int run = lots.runOfKind(tables.jobKind[job]);
      ofJob[job] = run;
      jobOf[run] = job;
      askedOfRun[run] |= asked[job];
    }
    keepGroup(0);
  }

  /** Keeps what was placed of a group from one index on, but for what is let go again. */
  private void keepGroup(int from) {
    int index = from;
    while (index < group.count) {
      int gone = index > from ? loose.letGo(group, index, jobOf[group.run[index]]) : 0;
      if (gone == 0) {
        int slot = group.slot[index];
        nextSegment[group.run[index]] = tables.segment[group.activity[index]] + 1;
        lastEnd = Math.max(lastEnd, timetable.end[slot]);
        timetable.attended += timetable.worker[slot] == Slots.NOBODY ? 0 : group.minutes[index];
      }
      index += Math.max(1, gone);
    }
  }

  /** Places the next claims of a run, as far as the list has asked for them. */
  private boolean advance(int run) {
    int kind = timetable.runKind[run];
    boolean placed = true;
    while (placed
        && nextSegment[run] < tables.segments[kind]
        && (askedOfRun[run] >> nextSegment[run] & 1) != 0) {
      placed = placeClaim(run);
    }
    return placed;
  }

  private boolean placeClaim(int run) {
    int kind = timetable.runKind[run];
    int local = tables.firstOfSegment(kind, nextSegment[run]);
    boolean tied = tables.loose[tables.first[kind] + local];
    if (tied) {
      loose.close(run);
      group.ofLooseClaim(run, local);
    } else {
      group.ofClaim(run, local, waitOver(run, local));
    }
    group.notBefore(settled);
    if (!placer.place(group, tables.shop.horizonMinutes())) {
      again = tied;
      if (tied) {
        // It finds no place in time any more, so it will not be let go.
        loose.keep(jobOf[run]);
      }
      return false;
    }
    keepGroup(tied ? 1 : 0);
    finishIfDone(run);
    return true;
  }

  /** When the wait before an activity is over. */
  private int waitOver(int run, int local) {
    int kind = timetable.runKind[run];
    int activity = tables.first[kind] + local;
    int before = timetable.runSlot[run] + local - 1;
    int from = timetable.end[before] - (local == 1 ? tables.familyTail[tables.family[kind]] : 0);
    return clocks[tables.waitClock[activity]].end(from, tables.waitHours[activity]);
  }

  private void finishIfDone(int run) {
    int kind = timetable.runKind[run];
    if (nextSegment[run] < tables.segments[kind]) {
      return;
    }
    int last = timetable.runSlot[run] + tables.size[kind] - 1;
    timetable.done(run, timetable.end[last] + tables.tail[kind]);
    waiting.ended(kind, timetable.end[last], asked);
  }
}
