package strickle.shop;

/**
 * Places a group of activities as early as its rules allow. Each activity is put at the first place
 * after the one it follows; when a most-wait or a held resource then does not work out, the earlier
 * activity's bound is raised and everything from there is placed again. Bounds only grow, so this
 * ends at the earliest places that hold together.
 */
final class Placer {

  /** A group that has not come to rest by then will not: its bounds creep minute by minute. */
  private static final int MOST_TRIES = 20_000;

  private static final int FAILED = -1;
  private static final int NOTHING = -1;

  private final Tables tables;
  private final Timetable timetable;
  private final Slots slots;
  private final Clock[] clocks;

  /** The activity that came too late behind a settled one when placing failed last. */
  private int blocked = NOTHING;

  Placer(Tables tables, Timetable timetable, Slots slots) {
    this.tables = tables;
    this.timetable = timetable;
    this.slots = slots;
    this.clocks = tables.shop.clocks().toArray(Clock[]::new);
  }

  /**
   * Places the whole group or nothing of it. Where workers differ in their hours, an activity can
   * keep its own most-wait by pausing, from one week to the next if need be, or end sooner with
   * somebody who starts too late, so that the one before it has to be pushed. The second is tried
   * first; a group that finds no room at all is tried again with the first.
   *
   * @param limit no activity may end after this minute
   * @return whether it was placed
   */
  boolean place(Group group, int limit) {
    boolean placed = placeEitherWay(group, limit);
    while (!placed && group.begun && blocked != NOTHING) {
      group.waived[blocked] = true;
      group.forgetBounds();
      placed = placeEitherWay(group, limit);
    }
    return placed;
  }

  private boolean placeEitherWay(Group group, int limit) {
    blocked = NOTHING;
    boolean placed = placeFrom(group, limit);
    if (!placed && limit == tables.shop.horizonMinutes()) {
      group.forgetBounds();
      slots.pausesRather = true;
      placed = placeFrom(group, limit);
      slots.pausesRather = false;
    }
    return placed;
  }

  private boolean placeFrom(Group group, int limit) {
    int next = 0;
    int tries = 0;
    while (next < group.count) {
      int placed = next;
      next = group.settled[next] ? next + 1 : placeOne(group, next, limit);
      if (next == FAILED || (next <= placed && ++tries > MOST_TRIES)) {
        takeBack(group, next == FAILED ? placed : next, 0);
        return false;
      }
    }
    return true;
  }

  /** Takes back the group's activities from {@code first} up to, not including, {@code end}. */
  void takeBack(Group group, int end, int first) {
    for (int index = end - 1; index >= first; index--) {
      if (!group.settled[index]) {
        releaseClosed(group, index, closings(group, index));
        int slot = group.slot[index];
        slots.give(timetable.worker[slot], timetable.worked[slot], group.minutes[index]);
      }
    }
  }

  /**
   * Places one activity.
   *
   * @return the next index to place: the one after it, or an earlier one whose bound has been
   *     raised (with all from there taken back), or {@link #FAILED} (with the others left in place)
   */
  private int placeOne(Group group, int index, int limit) {
    int from = Math.max(group.earliestStart[index], waitOver(group, index));
    int by = latestStart(group, index);
    if (!slots.find(group, index, from, by, limit)) {
      return FAILED;
    }
    if (slots.start > by) {
      return pushPrevious(group, index);
    }
    write(group, index);
    slots.take(group.minutes[index]);
    return closeHolds(group, index);
  }

  private void write(Group group, int index) {
    int slot = group.slot[index];
    timetable.worker[slot] = slots.worker;
    timetable.worked[slot] = slots.worked;
    timetable.minutes[slot] = group.minutes[index];
    timetable.start[slot] = slots.start;
    timetable.end[slot] = slots.end;
  }

  private int waitOver(Group group, int index) {
    if (group.previous[index] < 0) {
      return 0;
    }
    int activity = group.activity[index];
    return clocks[tables.waitClock[activity]].end(
        waitFrom(group, index), tables.waitHours[activity]);
  }

  /** When the wait before an activity begins: as the previous one ends, less a lot's tail. */
  private int waitFrom(Group group, int index) {
    int previous = group.previous[index];
    return timetable.end[group.slot[previous]] - (previous == 0 ? group.tailOfFirst : 0);
  }

  private int latestStart(Group group, int index) {
    int atMost = tables.atMost[group.activity[index]];
    if (atMost == Tables.NO_LIMIT || group.previous[index] < 0 || group.waived[index]) {
      return Integer.MAX_VALUE;
    }
    return waitFrom(group, index) + atMost;
  }

  /** The activity came too late: the one it follows has to end later as well. */
  private int pushPrevious(Group group, int index) {
    int previous = group.previous[index];
    if (group.settled[previous]) {
      blocked = index;
      return FAILED;
    }
    int tail = previous == 0 ? group.tailOfFirst : 0;
    int end = slots.start - tables.atMost[group.activity[index]] + tail;
    group.earliestEnd[previous] = Math.max(group.earliestEnd[previous] + 1, end);
    takeBack(group, index, previous);
    return previous;
  }

  private int closeHolds(Group group, int index) {
    HoldTables holds = tables.holds;
    int activity = group.activity[index];
    int first = group.run[index] < 0 ? 0 : holds.closeFirst[activity];
    for (int close = first; close < closings(group, index); close++) {
      int hold = holds.closing[close];
      int opener = group.backFrom(index, activity - holds.opener[hold]);
      int from = timetable.start[group.slot[opener]];
      int minutes = closesAt(group, index, hold) - from;
      Usage usage = slots.usage(holds.resource[hold]);
      int units = holds.units[hold] * timetable.runJobs[group.run[index]];
      if (minutes > 0 && usage.firstFree(from, minutes, units) > from) {
        return pushOpener(group, index, close, opener, minutes);
      }
      usage.add(from, from + minutes, units);
    }
    return index + 1;
  }

  /**
   * A resource was not free for so long: it has to be opened after the last minute, up to the one
   * it closes, at which it was not. Opened later it may close no earlier, so no place is missed.
   */
  private int pushOpener(Group group, int index, int close, int opener, int minutes) {
    HoldTables holds = tables.holds;
    int hold = holds.closing[close];
    int from = timetable.start[group.slot[opener]];
    int units = holds.units[hold] * timetable.runJobs[group.run[index]];
    int free = slots.usage(holds.resource[hold]).lastTakenBefore(from, from + minutes, units);
    releaseClosed(group, index, close);
    int slot = group.slot[index];
    slots.give(timetable.worker[slot], timetable.worked[slot], group.minutes[index]);
    if (group.settled[opener]) {
      // Everything up to this one is still in place, as placeOne promises.
      return FAILED;
    }
    takeBack(group, index, opener);
    group.earliestStart[opener] = free;
    return opener;
  }

  private int closings(Group group, int index) {
    return tables.holds.closeFirst[group.activity[index] + 1];
  }

  private int closesAt(Group group, int index, int hold) {
    int slot = group.slot[index];
    return switch (tables.holds.until[hold]) {
      case START -> timetable.start[slot];
      case END -> timetable.end[slot];
      case DONE -> timetable.end[slot] + tables.tail[timetable.runKind[group.run[index]]];
    };
  }

  private void releaseClosed(Group group, int index, int end) {
    HoldTables holds = tables.holds;
    int activity = group.activity[index];
    for (int close = holds.closeFirst[activity]; close < end; close++) {
      int hold = holds.closing[close];
      int opener = group.backFrom(index, activity - holds.opener[hold]);
      int from = timetable.start[group.slot[opener]];
      int units = holds.units[hold] * timetable.runJobs[group.run[index]];
      slots
          .usage(holds.resource[hold])
          .add(from, Math.max(from, closesAt(group, index, hold)), -units);
    }
  }
}
