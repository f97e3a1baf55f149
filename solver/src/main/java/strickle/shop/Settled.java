package strickle.shop;

import java.util.Arrays;
import java.util.List;

/**
 * The settled lots of a shop: each takes the first jobs of its kinds that no other has taken. As
 * they are placed before all others, their runs have the first numbers, in the order of their
 * parts.
 */
final class Settled {

  private final Tables tables;
  private final List<FixedLot> fixed;
  private final int[][] jobs;
  private final int[] firstRun;
  private final int underWay;

  /** For each run its part, and what is settled of it: the first activity and then the rest. */
  private final FixedLot.Part[] parts;

  private final int[][] worker;
  private final int[][] start;
  private final int[][] end;
  private final SettledHours hours;
  private final SettledHolds holds;

  Settled(Tables tables) {
    this.tables = tables;
    this.fixed = tables.shop.fixed();
    this.underWay = (int) fixed.stream().filter(FixedLot::begun).count();
    this.jobs = new int[fixed.size()][];
    this.firstRun = Tables.sums(fixed.stream().mapToInt(lot -> lot.parts().size()).toArray());
    this.parts = new FixedLot.Part[firstRun[fixed.size()]];
    this.worker = new int[parts.length][];
    this.start = new int[parts.length][];
    this.end = new int[parts.length][];
    int[] next = tables.jobFirst.clone();
    for (int lot = 0; lot < jobs.length; lot++) {
      jobs[lot] = jobsOf(fixed.get(lot), next);
      for (int i = 0; i < fixed.get(lot).parts().size(); i++) {
        settle(firstRun[lot] + i, fixed.get(lot), fixed.get(lot).parts().get(i));
      }
    }
    this.hours = new SettledHours(tables, this);
    this.holds = new SettledHolds(tables, this);
  }

  private void settle(int run, FixedLot lot, FixedLot.Part part) {
    int count = 1 + part.rest().size();
    parts[run] = part;
    worker[run] = new int[count];
    start[run] = new int[count];
    end[run] = new int[count];
    worker[run][0] = lot.worker();
    start[run][0] = lot.start();
    end[run][0] = lot.end().orElseGet(() -> endOf(lot));
    for (int i = 1; i < count; i++) {
      FixedLot.Place place = part.rest().get(i - 1);
      worker[run][i] = place.worker();
      start[run][i] = place.start();
      end[run][i] = place.end();
    }
  }

  int count() {
    return jobs.length;
  }

  /** How many runs all settled lots have. */
  int runs() {
    return parts.length;
  }

  int firstRun(int lot) {
    return firstRun[lot];
  }

  FixedLot.Part part(int run) {
    return parts[run];
  }

  /** How many activities of a run are settled; 0 for a run of no settled lot. */
  int places(int run) {
    return run < parts.length ? start[run].length : 0;
  }

  int worker(int run, int local) {
    return worker[run][local];
  }

  int start(int run, int local) {
    return start[run][local];
  }

  int end(int run, int local) {
    return end[run][local];
  }

  /** How many lots are under way; they come first. */
  int underWay() {
    return underWay;
  }

  /** Whether a lot is under way. */
  boolean begun(int lot) {
    return fixed.get(lot).begun();
  }

  /** The earliest minute an activity of a run may start by itself. */
  int notBefore(int run, int local) {
    if (run >= parts.length || parts[run].notBefore().isEmpty() || local < start[run].length) {
      return Integer.MIN_VALUE;
    }
    return parts[run].notBefore().get(local - start[run].length);
  }

  /** How many claims of a run are settled or are placed with what is settled. */
  int claims(int run) {
    int first = tables.first[parts[run].kind()];
    return tables.segment[first + start[run].length - 1] + 1;
  }

  /** How many claims of each job need no place in the list. */
  int[] claimsOfJobs() {
    int[] claims = new int[tables.jobs];
    for (int lot = 0; lot < jobs.length; lot++) {
      int at = 0;
      for (int run = firstRun[lot]; run < firstRun[lot + 1]; run++) {
        for (int i = 0; i < parts[run].jobs(); i++) {
          claims[jobs[lot][at++]] = claims(run);
        }
      }
    }
    return claims;
  }

  /** Takes all that is settled, before anything is placed. */
  void take(Slots slots) {
    hours.take(slots);
    holds.take(slots);
  }

  /**
   * Gives back what a lot holds with no end yet, so that it can be placed.
   *
   * @return whether what it holds with an end is there to be held
   */
  boolean open(int lot, Slots slots) {
    return holds.open(lot, slots);
  }

  /** Forms settled lot {@code lot} and writes what is settled of it into the timetable. */
  void form(int lot, Lots lots, Timetable timetable) {
    lots.begin(jobs[lot][0]);
    for (int i = 1; i < jobs[lot].length; i++) {
      lots.force(jobs[lot][i]);
    }
    for (int run = firstRun[lot]; run < firstRun[lot + 1]; run++) {
      for (int local = 0; local < start[run].length; local++) {
        int slot = timetable.runSlot[run] + local;
        timetable.worker[slot] = worker[run][local];
        timetable.worked[slot] = hours.worked(run, local);
        timetable.minutes[slot] = hours.minutes(run, local);
        timetable.start[slot] = start[run][local];
        timetable.end[slot] = end[run][local];
      }
    }
  }

  private int[] jobsOf(FixedLot lot, int[] next) {
    int count = lot.parts().stream().mapToInt(FixedLot.Part::jobs).sum();
    int[] members = new int[count];
    int at = 0;
    for (FixedLot.Part part : lot.parts()) {
      for (int i = 0; i < part.jobs(); i++) {
        members[at++] = next[part.kind()]++;
      }
    }
    return members;
  }

  /** The end of a first activity that takes the minutes it needs. */
  private int endOf(FixedLot lot) {
    int kind = lot.parts().get(0).kind();
    int total = tables.sharedMinutes[tables.family[kind]];
    for (FixedLot.Part part : lot.parts()) {
      total += tables.minutes(tables.first[part.kind()], part.jobs());
    }
    return lot.start() + total;
  }

  @Override
  public String toString() {
    return "Settled" + Arrays.deepToString(start);
  }
}
