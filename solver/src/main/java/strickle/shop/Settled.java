package strickle.shop;

import java.util.List;

/** The settled lots of a shop: each takes the first jobs of its kinds that no other has taken. */
final class Settled {

  private final Tables tables;
  private final List<FixedLot> fixed;
  private final int[][] jobs;
  private final int[] worker;
  private final int[] start;
  private final int[] worked;
  private final int[] minutes;

  Settled(Tables tables) {
    this.tables = tables;
    this.fixed = tables.shop.fixed();
    this.jobs = new int[fixed.size()][];
    this.worker = fixed.stream().mapToInt(FixedLot::worker).toArray();
    this.start = fixed.stream().mapToInt(FixedLot::start).toArray();
    this.worked = new int[fixed.size()];
    this.minutes = new int[fixed.size()];
    int[] next = tables.jobFirst.clone();
    for (int lot = 0; lot < jobs.length; lot++) {
      jobs[lot] = jobsOf(fixed.get(lot), next);
      worked[lot] = tables.shop.workers().get(worker[lot]).worked(start[lot]);
      minutes[lot] = minutesOf(fixed.get(lot));
    }
  }

  int count() {
    return jobs.length;
  }

  /** Which jobs are settled. */
  boolean[] jobs() {
    boolean[] is = new boolean[tables.jobs];
    for (int[] lot : jobs) {
      for (int job : lot) {
        is[job] = true;
      }
    }
    return is;
  }

  /** Takes the time of every settled lot, before anything else is placed. */
  void take(Slots slots) {
    for (int lot = 0; lot < jobs.length; lot++) {
      slots.take(worker[lot], worked[lot], minutes[lot]);
    }
  }

  /** Forms settled lot {@code lot}. */
  void form(int lot, Lots lots) {
    lots.begin(jobs[lot][0]);
    for (int i = 1; i < jobs[lot].length; i++) {
      lots.force(jobs[lot][i]);
    }
  }

  /** Writes its first activity where the timetable keeps it. */
  void write(int lot, Timetable timetable, int slot) {
    timetable.worker[slot] = worker[lot];
    timetable.worked[slot] = worked[lot];
    timetable.minutes[slot] = minutes[lot];
    timetable.start[slot] = start[lot];
    timetable.end[slot] = start[lot] + minutes[lot];
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

  private int minutesOf(FixedLot lot) {
    int kind = lot.parts().get(0).kind();
    int total = tables.sharedMinutes[tables.family[kind]];
    for (FixedLot.Part part : lot.parts()) {
      total += tables.minutes(tables.first[part.kind()], part.jobs());
    }
    return total;
  }
}
