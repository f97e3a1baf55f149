package strickle.shop;

import java.util.Arrays;
import java.util.List;

/** Reads the value of a schedule off its timetable. */
final class Objective {

  /** Below this a part of a job is rounding, and no job. */
  private static final double TOLERANCE = 1e-9;

  private final Tables tables;
  private final DueTables dues;
  private final int[] met;

  /** What each run of a settled lot is worth, if any of them is worth less than its jobs. */
  private final double[] worth;

  private final boolean plain;

  Objective(Tables tables) {
    this.tables = tables;
    this.dues = tables.dues;
    this.met = new int[dues.at.length];
    List<FixedLot.Part> parts =
        tables.shop.fixed().stream().flatMap(lot -> lot.parts().stream()).toList();
    this.worth = parts.stream().mapToDouble(FixedLot.Part::worth).toArray();
    this.plain = parts.stream().allMatch(part -> part.worth() >= part.jobs());
  }

  /** Works out when each due date is met: its jobs are the first of their kinds to be done. */
  int[] met(Timetable timetable) {
    Arrays.fill(met, 0);
    if (!plain) {
      return metByWorth(timetable);
    }
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

  /** The same where runs of settled lots are worth less than their jobs. */
  private int[] metByWorth(Timetable timetable) {
    for (int kind = 0; kind < tables.kinds; kind++) {
      int next = timetable.firstRunOfKind[kind];
      double sum = 0;
      int done = 0;
      for (int need = dues.needFirst[kind]; need < dues.needFirst[kind + 1]; need++) {
        while (next >= 0 && sum < dues.needWorth[need] - TOLERANCE) {
          sum += next < worth.length ? worth[next] : timetable.runJobs[next];
          done = timetable.runDone[next];
          next = timetable.runNextOfKind[next];
        }
        int due = dues.needDue[need];
        met[due] = Math.max(met[due], done);
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
