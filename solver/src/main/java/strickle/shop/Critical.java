package strickle.shop;

import java.util.Arrays;

/**
 * What holds up the due dates that a schedule misses: for each, the chain of activities that leads
 * to it without a gap is followed backwards, and wherever one activity waits for a worker or a
 * resource that another has, the two claims are noted as a pair.
 */
final class Critical {

  private static final int MOST_PAIRS = 4096;
  private static final int NONE = -1;

  private final Tables tables;
  private final Claims claims;
  private final Calendar[] calendars;
  private final Clock[] clocks;
  private final int[] held = new int[MOST_PAIRS];
  private final int[] holder = new int[MOST_PAIRS];
  private final boolean[] seen;
  private int pairs;

  private Timetable timetable;
  private Decoder decoder;
  private int run;
  private int local;

  Critical(Tables tables, Claims claims, int slots) {
    this.tables = tables;
    this.claims = claims;
    this.calendars = tables.shop.workers().toArray(Calendar[]::new);
    this.clocks = tables.shop.clocks().toArray(Clock[]::new);
    this.seen = new boolean[slots];
  }

  /** How many pairs there are. */
  int pairs() {
    return pairs;
  }

  /** The claim that has to wait. */
  int held(int pair) {
    return held[pair];
  }

  /** The claim it has to wait for. */
  int holder(int pair) {
    return holder[pair];
  }

  /** Reads the pairs off the schedule generated last. */
  void read(Decoder last) {
    decoder = last;
    timetable = last.timetable();
    pairs = 0;
    Arrays.fill(seen, 0, timetable.slots, false);
    DueTables dues = tables.dues;
    int[] met = last.met();
    for (int kind = 0; kind < tables.kinds; kind++) {
      for (int need = dues.needFirst[kind]; need < dues.needFirst[kind + 1]; need++) {
        int due = dues.needDue[need];
        if (dues.weight[due] > 0 && met[due] > dues.at[due]) {
          follow(kind, met[due]);
        }
      }
    }
  }

  /** Follows the run of a kind that is done at a moment, if there is one. */
  private void follow(int kind, int done) {
    int one = timetable.firstRunOfKind[kind];
    while (one >= 0 && timetable.runDone[one] != done) {
      one = timetable.runNextOfKind[one];
    }
    if (one < 0) {
      return;
    }
    run = one;
    local = tables.size[kind] - 1;
    boolean goesOn = true;
    while (goesOn && !seen[slot()] && pairs < MOST_PAIRS) {
      seen[slot()] = true;
      goesOn = step();
    }
  }

  private int slot() {
    return timetable.runSlot[run] + local;
  }

  /** Goes to what the present activity waits for; false at the beginning of the chain. */
  private boolean step() {
    boolean byWait = local > 0 && startsAsWaitIsOver();
    int claim = claim();
    if (!byWait && toLink()) {
      return true;
    }
    if (!byWait && (toWorker() || toResource())) {
      if (claim != NONE && claim() != NONE && claim != claim()) {
        held[pairs] = claim;
        holder[pairs] = claim();
        pairs++;
      }
      return true;
    }
    local--;
    return local >= 0;
  }

  private int claim() {
    int activity = tables.first[timetable.runKind[run]] + local;
    return claims.of(decoder.jobOf(run), tables.segment[activity]);
  }

  private boolean startsAsWaitIsOver() {
    int slot = slot();
    int kind = timetable.runKind[run];
    int activity = tables.first[kind] + local;
    int tail = local == 1 ? tables.familyTail[tables.family[kind]] : 0;
    int over =
        clocks[tables.waitClock[activity]].end(
            timetable.end[slot - 1] - tail, tables.waitHours[activity]);
    int worker = timetable.worker[slot];
    return worker == Slots.NOBODY
        ? timetable.start[slot] <= over
        : timetable.worked[slot] <= calendars[worker].worked(over);
  }

  /** Goes to what the worker did right before. */
  private boolean toWorker() {
    int slot = slot();
    int worker = timetable.worker[slot];
    if (worker == Slots.NOBODY) {
      return false;
    }
    for (int other = 0; other < timetable.runs; other++) {
      int first = timetable.runSlot[other];
      for (int i = 0; i < tables.size[timetable.runKind[other]]; i++) {
        if (timetable.worker[first + i] == worker
            && timetable.worked[first + i] + timetable.minutes[first + i]
                == timetable.worked[slot]) {
          run = other;
          local = i;
          return true;
        }
      }
    }
    return false;
  }

  /** Goes to an activity that gave back, at this very moment, something that is opened now. */
  private boolean toResource() {
    HoldTables holds = tables.holds;
    int activity = tables.first[timetable.runKind[run]] + local;
    for (int hold = holds.openFirst[activity]; hold < holds.openFirst[activity + 1]; hold++) {
      if (toHolder(holds.resource[hold])) {
        return true;
      }
    }
    return false;
  }

  private boolean toHolder(int resource) {
    int slot = slot();
    for (int other = 0; other < timetable.runs; other++) {
      int kind = timetable.runKind[other];
      for (int i = 0; other != run && i < tables.size[kind]; i++) {
        if (gives(other, tables.first[kind] + i, i, resource, slot)) {
          run = other;
          local = i;
          return true;
        }
      }
    }
    return false;
  }

  private boolean gives(int other, int activity, int place, int resource, int to) {
    HoldTables holds = tables.holds;
    for (int i = holds.closeFirst[activity]; i < holds.closeFirst[activity + 1]; i++) {
      int hold = holds.closing[i];
      if (holds.resource[hold] == resource) {
        int slot = timetable.runSlot[other] + place;
        int given =
            switch (holds.until[hold]) {
              case START -> timetable.start[slot];
              case END -> timetable.end[slot];
              case DONE -> timetable.runDone[other];
            };
        if (startsAt(to, given)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether an activity starts as soon as its worker is open from a moment on. */
  private boolean startsAt(int slot, int moment) {
    int worker = timetable.worker[slot];
    if (worker == Slots.NOBODY || moment > timetable.start[slot]) {
      return timetable.start[slot] == moment;
    }
    return calendars[worker].worked(moment) == timetable.worked[slot];
  }

  /** Goes to a job that this one is linked behind and that ends just then. */
  private boolean toLink() {
    LinkTables links = tables.links;
    int kind = timetable.runKind[run];
    for (int i = links.beforeFirst[kind]; local == 0 && i < links.beforeFirst[kind + 1]; i++) {
      int other = timetable.firstRunOfKind[links.before[i]];
      int last = tables.size[links.before[i]] - 1;
      int end = timetable.end[timetable.runSlot[other] + last];
      if (end + links.beforeMinutes[i] == timetable.start[slot()]) {
        run = other;
        local = last;
        return true;
      }
    }
    return false;
  }
}
