package strickle.shop;

import java.util.Arrays;

/**
 * The outcome of one decoding, in arrays that are used again and again: lots, the runs in them, and
 * for each run a slot for each of its activities (slot 0 repeats what its lot's first activity is).
 */
final class Timetable {

  private final Tables tables;

  int lots;
  int runs;
  int slots;

  final int[] runKind;
  final int[] runJobs;
  final int[] runLot;
  final int[] runSlot;
  final int[] runDone;
  final int[] runNextOfKind;
  final int[] firstRunOfKind;

  final int[] worker;
  final int[] worked;
  final int[] minutes;
  final int[] start;
  final int[] end;

  private final int[][] ofRuns;
  private final int[][] ofSlots;

  /** Attended minutes of all that is placed. */
  long attended;

  Timetable(Tables tables) {
    this.tables = tables;
    int most = 0;
    for (int kind = 0; kind < tables.kinds; kind++) {
      most += tables.size[kind] * (tables.jobFirst[kind + 1] - tables.jobFirst[kind]);
    }
    runKind = new int[tables.jobs];
    runJobs = new int[tables.jobs];
    runLot = new int[tables.jobs];
    runSlot = new int[tables.jobs];
    runDone = new int[tables.jobs];
    runNextOfKind = new int[tables.jobs];
    firstRunOfKind = new int[tables.kinds];
    worker = new int[most];
    worked = new int[most];
    minutes = new int[most];
    start = new int[most];
    end = new int[most];
    ofRuns = new int[][] {runKind, runJobs, runLot, runSlot, runDone, runNextOfKind};
    ofSlots = new int[][] {worker, worked, minutes, start, end};
  }

  void clear() {
    lots = 0;
    runs = 0;
    slots = 0;
    attended = 0;
    Arrays.fill(firstRunOfKind, -1);
  }

  /** Adds a run of no jobs yet to the lot being formed. */
  int openRun(int kind) {
    int run = runs++;
    runKind[run] = kind;
    runJobs[run] = 0;
    runLot[run] = lots;
    runSlot[run] = slots;
    runDone[run] = 0;
    runNextOfKind[run] = -1;
    forgetPlaces(slots, slots + tables.size[kind]);
    slots += tables.size[kind];
    return run;
  }

  /** Leaves nothing of schedules before, so that what is the same looks the same. */
  private void forgetPlaces(int from, int until) {
    for (int[] one : ofSlots) {
      Arrays.fill(one, from, until, 0);
    }
  }

  void save(Memo memo) {
    memo.put(lots);
    memo.put(runs);
    memo.put(slots);
    memo.put(attended);
    memo.put(firstRunOfKind, firstRunOfKind.length);
    for (int[] one : ofRuns) {
      memo.put(one, runs);
    }
    for (int[] one : ofSlots) {
      memo.put(one, slots);
    }
  }

  void load(Memo memo) {
    lots = memo.take();
    runs = memo.take();
    slots = memo.take();
    attended = memo.takeLong();
    memo.take(firstRunOfKind, firstRunOfKind.length);
    for (int[] one : ofRuns) {
      memo.take(one, runs);
    }
    for (int[] one : ofSlots) {
      memo.take(one, slots);
    }
  }

  /** Takes back every run from {@code run} on. */
  void dropRunsFrom(int run) {
    if (run < runs) {
      slots = runSlot[run];
      runs = run;
    }
  }

  /** Writes the first activity of a lot, placed for run {@code from}, into run {@code to}. */
  void repeatFirst(int from, int to) {
    int source = runSlot[from];
    int slot = runSlot[to];
    worker[slot] = worker[source];
    worked[slot] = worked[source];
    minutes[slot] = minutes[source];
    start[slot] = start[source];
    end[slot] = end[source];
  }

  /** Notes when a run is done, keeping its kind's runs in the order they are. */
  void done(int run, int at) {
    runDone[run] = at;
    int kind = runKind[run];
    int before = -1;
    int next = firstRunOfKind[kind];
    while (next >= 0 && runDone[next] <= at) {
      before = next;
      next = runNextOfKind[next];
    }
    runNextOfKind[run] = next;
    if (before < 0) {
      firstRunOfKind[kind] = run;
    } else {
      runNextOfKind[before] = run;
    }
  }
}
