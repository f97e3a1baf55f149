package strickle.shop;

import java.util.Arrays;

/** Reads the value of a schedule off its timetable. */
final class Objective {

  private final Tables tables;
  private final DueTables dues;
  private final int[] met;

  Objective(Tables tables) {
    this.tables = tables;
    this.dues = tables.dues;
    this.met = new int[dues.at.length];
  }

  /** Works out when each due date is met: its jobs are the first of their kinds to be done. */
  int[] met(Timetable timetable) {
    Arrays.fill(met, 0);
    for (int kind = 0; kind < tables.kinds; kind++) {
      int run = timetable.firstRunOfKind[kind];
      int jobs = run < 0 ? 0 : timetable.runJobs[run];
      for (int need = dues.needFirst[kind]; need < dues.needFirst[kind + 1]; need++) {
        while (jobs < dues.needCount[need]) {
          run = timetable.runNextOfKind[run];
          jobs += timetable.runJobs[run];
        }
        int due = dues.needDue[need];
        met[due] = Math.max(met[due], timetable.runDone[run]);
      }
    }
    return met;
  }

  /** Weighted started late units of {@link #met}. */
  long late(Timetable timetable) {
    int[] at = met(timetable);
    long late = 0;
    for (int due = 0; due < at.length; due++) {
      long minutes = Math.max(0L, (long) at[due] - dues.at[due]);
      late += dues.weight[due] * ((minutes + dues.lateUnitMinutes - 1) / dues.lateUnitMinutes);
    }
    return late;
  }

  /** Sum over the jobs of the minutes until they are done. */
  long flow(Timetable timetable) {
    long flow = 0;
    for (int run = 0; run < timetable.runs; run++) {
      flow += (long) timetable.runJobs[run] * timetable.runDone[run];
    }
    return flow;
  }
}
