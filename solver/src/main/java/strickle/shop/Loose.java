package strickle.shop;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Activities that were placed to see that they fit, and are let go again: their claims come later
 * in the list, and until then others may take their time. What their run holds stays held until
 * they are placed for good.
 */
final class Loose {

  /** Later than anything ends. */
  private static final int EVER = Integer.MAX_VALUE / 4;

  private final Tables tables;
  private final Timetable timetable;
  private final Slots slots;
  private final Placer placer;

  /** Of which jobs nothing must be let go. */
  private final boolean[] kept;

  private final int[] openRuns;
  private int open;

  Loose(Tables tables, Timetable timetable, Slots slots, Placer placer) {
    this.tables = tables;
    this.timetable = timetable;
    this.slots = slots;
    this.placer = placer;
    this.kept = new boolean[tables.jobs];
    this.openRuns = new int[tables.jobs];
  }

  /** Whether anything is ever let go. */
  boolean any() {
    return IntStream.range(0, tables.loose.length).anyMatch(i -> tables.loose[i]);
  }

  /** Forgets which jobs must not be let go. */
  void forget() {
    Arrays.fill(kept, false);
  }

  void clear() {
    open = 0;
  }

  /** Lets nothing of a job be let go from now on. */
  void keep(int job) {
    kept[job] = true;
  }

  /**
   * Lets go an activity of a lot just placed and those of its run behind it, if that can be.
   *
   * @param job one of its run's jobs
   * @return how many were let go
   */
  int letGo(Group group, int index, int job) {
    if (!tables.loose[group.activity[index]] || kept[job] || !canStayOpen(group, index)) {
      return 0;
    }
    int end = index + 1;
    while (end < group.count && group.run[end] == group.run[index]) {
      end++;
    }
    placer.takeBack(group, end, index);
    openRuns[open++] = group.run[index];
    hold(group.run[index], 1);
    return end - index;
  }

  /** Whether nobody has yet been promised later what the run holds. */
  private boolean canStayOpen(Group group, int index) {
    HoldTables holds = tables.holds;
    int run = group.run[index];
    int end = timetable.end[group.slot[index]];
    int first = tables.first[timetable.runKind[run]];
    for (int hold = holds.openFirst[first]; hold < holds.openFirst[first + 1]; hold++) {
      int units = holds.units[hold] * timetable.runJobs[run];
      if (slots.usage(holds.resource[hold]).firstFree(end, EVER - end, units) > end) {
        return false;
      }
    }
    return true;
  }

  /** Gives back what a run holds without an end, because it is about to get one. */
  void close(int run) {
    int at = 0;
    while (at < open && openRuns[at] != run) {
      at++;
    }
    if (at < open) {
      open--;
      System.arraycopy(openRuns, at + 1, openRuns, at, open - at);
      hold(run, -1);
    }
  }

  private void hold(int run, int sign) {
    HoldTables holds = tables.holds;
    int first = tables.first[timetable.runKind[run]];
    int start = timetable.start[timetable.runSlot[run]];
    for (int hold = holds.openFirst[first]; hold < holds.openFirst[first + 1]; hold++) {
      int units = sign * holds.units[hold] * timetable.runJobs[run];
      slots.usage(holds.resource[hold]).add(start, EVER, units);
    }
  }

  /** A run that holds without an end what a lot of the runs from {@code firstRun} needs, or -1. */
  int inTheWay(int firstRun) {
    for (int i = 0; i < open; i++) {
      if (isInTheWay(openRuns[i], firstRun)) {
        return openRuns[i];
      }
    }
    return -1;
  }

  private boolean isInTheWay(int run, int firstRun) {
    HoldTables holds = tables.holds;
    int first = tables.first[timetable.runKind[run]];
    for (int hold = holds.openFirst[first]; hold < holds.openFirst[first + 1]; hold++) {
      int resource = holds.resource[hold];
      Usage usage = slots.usage(resource);
      int needed = needed(resource, firstRun);
      if (needed > 0 && needed > usage.capacity() - usage.heldAt(EVER - 1)) {
        return true;
      }
    }
    return false;
  }

  private int needed(int resource, int firstRun) {
    HoldTables holds = tables.holds;
    int units = 0;
    for (int run = firstRun; run < timetable.runs; run++) {
      int first = tables.first[timetable.runKind[run]];
      for (int hold = holds.openFirst[first]; hold < holds.openFirst[first + 1]; hold++) {
        units += holds.resource[hold] == resource ? holds.units[hold] * timetable.runJobs[run] : 0;
      }
    }
    return units;
  }
}
