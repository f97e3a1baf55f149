package strickle.shop;

import java.util.Arrays;

/**
 * Forms a lot: from a claim on, its neighbours in the list that are of the same family join, while
 * the family's limits and the units of every resource allow; the first that does not fit ends it.
 */
final class Lots {

  private final Tables tables;
  private final Timetable timetable;
  private final int[] capacity;
  private final long[] total;

  /** The jobs of the lot being formed, in the order of the list. */
  final int[] members;

  int count;
  int minutes;
  private int firstRun;
  private int family;

  Lots(Tables tables, Timetable timetable) {
    this.tables = tables;
    this.timetable = timetable;
    this.capacity = tables.shop.resources().stream().mapToInt(Resource::left).toArray();
    int measures = 0;
    for (long[] limits : tables.limits) {
      measures = Math.max(measures, limits.length);
    }
    this.total = new long[measures];
    this.members = new int[Math.max(1, tables.jobs)];
  }

  /** Begins a lot of {@code job} alone. */
  void begin(int job) {
    int kind = tables.jobKind[job];
    family = tables.family[kind];
    firstRun = timetable.runs;
    count = 0;
    minutes = tables.sharedMinutes[family];
    Arrays.fill(total, 0);
    add(job);
  }

  /** Lets {@code job} join whether or not it fits: a settled lot is what it is. */
  void force(int job) {
    add(job);
  }

  /** Whether {@code job} is of the family of the lot being formed. */
  boolean sameFamily(int job) {
    return tables.family[tables.jobKind[job]] == family;
  }

  /** Lets {@code job} join, if it fits. */
  boolean join(int job) {
    if (!fits(tables.jobKind[job])) {
      return false;
    }
    add(job);
    return true;
  }

  /** Takes the lot apart again, down to its first {@code keep} jobs. */
  void shrinkTo(int keep) {
    timetable.dropRunsFrom(firstRun);
    int first = members[0];
    begin(first);
    for (int i = 1; i < keep; i++) {
      add(members[i]);
    }
  }

  /** Takes the lot apart and forgets it. */
  void drop() {
    timetable.dropRunsFrom(firstRun);
  }

  int firstRun() {
    return firstRun;
  }

  private boolean fits(int kind) {
    long[] limits = tables.limits[family];
    long[] amounts = tables.amounts[kind];
    for (int measure = 0; measure < limits.length; measure++) {
      if (total[measure] + amounts[measure] > limits[measure]) {
        return false;
      }
    }
    int first = tables.first[kind];
    int more = tables.minutes(first, 1) - (jobsOf(kind) > 0 ? tables.fixedMinutes[first] : 0);
    return minutes + more <= tables.longest[family] && resourcesFit(kind);
  }

  /** First activities of a lot open their holds together; later ones only within their run. */
  private boolean resourcesFit(int kind) {
    HoldTables holds = tables.holds;
    int first = tables.first[kind];
    for (int hold = holds.openFirst[first]; hold < holds.openFirst[first + 1]; hold++) {
      int resource = holds.resource[hold];
      int already = 0;
      for (int run = firstRun; run < timetable.runs; run++) {
        already += unitsOfFirst(run, resource);
      }
      if (already + holds.units[hold] > capacity[resource]) {
        return false;
      }
    }
    int jobs = jobsOf(kind) + 1;
    int end = holds.openFirst[first + tables.size[kind]];
    for (int hold = holds.openFirst[first + 1]; hold < end; hold++) {
      if (holds.units[hold] * jobs > capacity[holds.resource[hold]]) {
        return false;
      }
    }
    return true;
  }

  private int unitsOfFirst(int run, int resource) {
    HoldTables holds = tables.holds;
    int first = tables.first[timetable.runKind[run]];
    int units = 0;
    for (int hold = holds.openFirst[first]; hold < holds.openFirst[first + 1]; hold++) {
      units += holds.resource[hold] == resource ? holds.units[hold] * timetable.runJobs[run] : 0;
    }
    return units;
  }

  private int jobsOf(int kind) {
    for (int run = firstRun; run < timetable.runs; run++) {
      if (timetable.runKind[run] == kind) {
        return timetable.runJobs[run];
      }
    }
    return 0;
  }

  private void add(int job) {
    int kind = tables.jobKind[job];
    long[] amounts = tables.amounts[kind];
    for (int measure = 0; measure < amounts.length; measure++) {
      total[measure] += amounts[measure];
    }
    int run = runOfKind(kind);
    int first = tables.first[kind];
    minutes +=
        tables.minutes(first, 1) - (timetable.runJobs[run] > 0 ? tables.fixedMinutes[first] : 0);
    timetable.runJobs[run]++;
    members[count++] = job;
  }

  /** The run of {@code kind} in this lot, opened if there is none yet. */
  int runOfKind(int kind) {
    for (int run = firstRun; run < timetable.runs; run++) {
      if (timetable.runKind[run] == kind) {
        return run;
      }
    }
    return timetable.openRun(kind);
  }
}
