package strickle.shop;

import java.util.Arrays;

/**
 * Activities that are placed together, in an order in which each comes after the one it follows: a
 * lot's first activity and the first claim of each of its runs, or a later claim of one run.
 */
final class Group {

  private final Tables tables;
  private final Timetable timetable;

  int count;

  /** Whether most-waits behind a settled activity give way when nothing else makes room. */
  boolean begun;

  final int[] activity;
  final int[] run;
  final int[] slot;
  final int[] minutes;

  /** Which activities are settled and must not move. */
  final boolean[] settled;

  /** Before which activities, behind a settled one, the most-wait has given way. */
  final boolean[] waived;

  /** The group's activity that this one follows, or -1. */
  final int[] previous;

  /** Earliest start and earliest end allowed so far; they only ever grow. */
  final int[] earliestStart;

  final int[] earliestEnd;

  /** The earliest starts there were at first. */
  private final int[] released;

  /** Resources that have to be free when an activity starts: a range of the three arrays below. */
  final int[] openFirst;

  final int[] openResource;
  final int[] openUnits;
  final int[] openMinutes;

  /** Minutes at the end of the first activity during which its jobs are already waiting. */
  int tailOfFirst;

  Group(Tables tables, Timetable timetable) {
    this.tables = tables;
    this.timetable = timetable;
    int most = timetable.start.length + 1;
    activity = new int[most];
    run = new int[most];
    slot = new int[most];
    minutes = new int[most];
    settled = new boolean[most];
    waived = new boolean[most];
    previous = new int[most];
    released = new int[most];
    earliestStart = new int[most];
    earliestEnd = new int[most];
    openFirst = new int[most + 1];
    int opens = tables.holds.most(tables);
    openResource = new int[opens];
    openUnits = new int[opens];
    openMinutes = new int[opens];
  }

  /** A lot of the runs from {@code firstRun} on, each up to the end of its first claim. */
  void ofLot(int firstRun, int lotMinutes, int earliest) {
    begin(tables.familyTail[tables.family[timetable.runKind[firstRun]]]);
    int kind = timetable.runKind[firstRun];
    add(tables.first[kind], firstRun, timetable.runSlot[firstRun], -1, lotMinutes, earliest);
    for (int one = firstRun; one < timetable.runs; one++) {
      openHolds(tables.first[timetable.runKind[one]], one);
      release(0, tables.notBefore[tables.first[timetable.runKind[one]]]);
    }
    for (int one = firstRun; one < timetable.runs; one++) {
      addChain(one, 1, 0, 0, 0);
    }
  }

  /** A settled lot: all that is settled of it, and the rest of the claims those stand in. */
  void ofSettled(int lot, Settled lots) {
    int first = lots.firstRun(lot);
    int kind = timetable.runKind[first];
    begin(tables.familyTail[tables.family[kind]]);
    begun = lots.begun(lot);
    int needed = timetable.minutes[timetable.runSlot[first]];
    add(tables.first[kind], first, timetable.runSlot[first], -1, needed, 0);
    for (int one = first; one < timetable.runs; one++) {
      addChain(one, 1, 0, 0, lots.claims(one) - 1);
    }
    for (int i = 0; i < count; i++) {
      settled[i] = slot[i] - timetable.runSlot[run[i]] < lots.places(run[i]);
      minutes[i] = settled[i] ? timetable.minutes[slot[i]] : minutes[i];
    }
    notBefore(lots);
  }

  /** The claim of a run that begins with its activity {@code local}, counted from 0. */
  void ofClaim(int one, int local, int earliest) {
    begin(0);
    int claim = tables.tie[tables.first[timetable.runKind[one]] + local];
    addChain(one, local, -1, claim, claim);
    release(0, earliest);
  }

  /** Lets an activity start at a minute at the earliest, or later if it was to be later anyway. */
  private void release(int index, int earliest) {
    earliestStart[index] = Math.max(earliestStart[index], earliest);
    released[index] = earliestStart[index];
  }

  /** A claim that is tied to the activity before it, which stays where it is. */
  void ofLooseClaim(int one, int local) {
    int kind = timetable.runKind[one];
    int before = timetable.runSlot[one] + local - 1;
    int claim = tables.tie[tables.first[kind] + local];
    begin(local == 1 ? tables.familyTail[tables.family[kind]] : 0);
    add(tables.first[kind] + local - 1, one, before, -1, timetable.minutes[before], 0);
    settled[0] = true;
    addChain(one, local, 0, claim, claim);
  }

  /** Lets no activity start before the minute that a settled lot gives for it. */
  void notBefore(Settled lots) {
    for (int i = 0; i < count && run[i] < lots.runs(); i++) {
      int from = lots.notBefore(run[i], slot[i] - timetable.runSlot[run[i]]);
      earliestStart[i] = Math.max(earliestStart[i], from);
      released[i] = earliestStart[i];
    }
  }

  /** Forgets all bounds but those there were at first. */
  void forgetBounds() {
    System.arraycopy(released, 0, earliestStart, 0, count);
    Arrays.fill(earliestEnd, 0, count, 0);
  }

  /** The group's index of the activity that stands {@code back} places earlier in a run's chain. */
  int backFrom(int index, int back) {
    int at = index;
    for (int i = 0; i < back; i++) {
      at = previous[at];
    }
    return at;
  }

  private void begin(int tail) {
    count = 0;
    begun = false;
    tailOfFirst = tail;
    openFirst[0] = 0;
  }

  /** Adds a run's activities of the claims {@code claim} to {@code last}, from one on. */
  private void addChain(int one, int from, int follows, int claim, int last) {
    int kind = timetable.runKind[one];
    int first = tables.first[kind];
    int previousIndex = follows;
    for (int i = first + from; i < first + tables.size[kind]; i++) {
      if (tables.tie[i] < claim || tables.tie[i] > last) {
        return;
      }
      int needed = tables.minutes(i, timetable.runJobs[one]);
      add(i, one, timetable.runSlot[one] + i - first, previousIndex, needed, 0);
      openHolds(i, one);
      previousIndex = count - 1;
    }
  }

  private void add(int what, int one, int where, int follows, int needed, int earliest) {
    activity[count] = what;
    run[count] = one;
    slot[count] = where;
    previous[count] = follows;
    minutes[count] = needed;
    earliestStart[count] = Math.max(earliest, tables.notBefore[what]);
    released[count] = earliestStart[count];
    earliestEnd[count] = 0;
    settled[count] = false;
    waived[count] = false;
    openFirst[count + 1] = openFirst[count];
    count++;
  }

  private void openHolds(int what, int one) {
    HoldTables holds = tables.holds;
    for (int hold = holds.openFirst[what]; hold < holds.openFirst[what + 1]; hold++) {
      int units = holds.units[hold] * timetable.runJobs[one];
      int least = holds.during[hold] ? minutes[count - 1] : holds.least[hold];
      open(holds.resource[hold], units, least);
    }
  }

  /** Adds up what several runs open of one resource; it is needed at least as long as the least. */
  private void open(int resource, int units, int least) {
    for (int open = openFirst[count - 1]; open < openFirst[count]; open++) {
      if (openResource[open] == resource) {
        openUnits[open] += units;
        openMinutes[open] = Math.min(openMinutes[open], least);
        return;
      }
    }
    int open = openFirst[count]++;
    openResource[open] = resource;
    openUnits[open] = units;
    openMinutes[open] = least;
  }
}
