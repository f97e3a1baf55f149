package strickle.shop;

import java.util.Arrays;

/**
 * Serial schedule generation: turns any order of the claims into a schedule that keeps every rule,
 * by placing claim after claim as early as what is already placed allows. After its construction it
 * allocates nothing.
 *
 * <p>Source: R. Kolisch, Serial and parallel resource-constrained project scheduling methods
 * revisited, European Journal of Operational Research 90 (1996) 320-333; the lots, pauses and
 * most-waits are this project's own.
 */
final class Decoder {

  /** Where a job's run is not known yet. */
  private static final int UNPLACED = -1;

  /** A shared lot that finds no place within this time of the last one is too large: ten weeks. */
  private static final int PATIENCE_MINUTES = 10 * 7 * 24 * 60;

  private final Tables tables;
  private final Claims claims;
  private final Timetable timetable;
  private final Slots slots;
  private final Group group;
  private final Placer placer;
  private final Lots lots;
  private final Settled settled;
  private final Objective objective;
  private final Waiting waiting;
  private final Tethers tethers;

  private final int[] runOfJob;
  private final int[] jobOfRun;
  private final int[] asked;
  private final int[] askedOfRun;
  private final int[] nextSegment;
  private final Clock[] clocks;
  private int[] order = {};
  private int lastEnd;
  private int failedSettled;
  private boolean complete;
  private long decoded;

  Decoder(Tables tables) {
    this.tables = tables;
    this.timetable = new Timetable(tables);
    this.slots = new Slots(tables);
    this.group = new Group(tables, timetable);
    this.placer = new Placer(tables, timetable, slots);
    this.lots = new Lots(tables, timetable);
    this.settled = new Settled(tables);
    this.claims = new Claims(tables, settled.claimsOfJobs());
    this.objective = new Objective(tables);
    this.waiting = new Waiting(tables);
    this.tethers = new Tethers(tables, timetable, group, placer, lots);
    this.runOfJob = new int[tables.jobs];
    this.jobOfRun = new int[tables.jobs];
    this.asked = new int[tables.jobs];
    this.askedOfRun = new int[tables.jobs];
    this.nextSegment = new int[tables.jobs];
    this.clocks = tables.shop.clocks().toArray(Clock[]::new);
  }

  Claims claims() {
    return claims;
  }

  Timetable timetable() {
    return timetable;
  }

  /** One of the jobs in a run of the schedule generated last. */
  int jobOf(int run) {
    return jobOfRun[run];
  }

  /** The run that a job is in, in the schedule generated last. */
  int runOf(int job) {
    return runOfJob[job];
  }

  /** How many schedules have been generated so far; what was placed again counts as well. */
  long decoded() {
    return decoded + tethers.schedulesAgain();
  }

  /**
   * Generates the schedule of an order of all claims.
   *
   * @return whether everything found a place within the horizon
   */
  boolean decode(int[] claimsInOrder) {
    decoded++;
    order = claimsInOrder;
    clear();
    placeSettled(0, settled.underWay());
    slots.loseWhatIsLost();
    placeSettled(settled.underWay(), settled.count());
    for (int at = 0; at < order.length && complete; at++) {
      int job = claims.job[order[at]];
      if (job != Claims.BREAK) {
        visit(at, job, claims.segment[order[at]]);
        placeFreed();
      }
    }
    return complete && tethers.finish(runOfJob, jobOfRun);
  }

  /** How far the order decoded last is from being a schedule, as far as that is known. */
  long missing() {
    return tethers.missing();
  }

  /** Weighted started late units of the schedule generated last. */
  long late() {
    return objective.late(timetable);
  }

  /** Flow of the schedule generated last. */
  long flow() {
    return objective.flow(timetable);
  }

  /** When each due date is met in the schedule generated last. */
  int[] met() {
    return objective.met(timetable);
  }

  /** The settled lot that could not be kept in the schedule generated last, or -1. */
  int failedSettled() {
    return failedSettled;
  }

  private void clear() {
    timetable.clear();
    slots.clear();
    Arrays.fill(runOfJob, UNPLACED);
    Arrays.fill(asked, 0);
    waiting.clear();
    lastEnd = 0;
    complete = !tables.distances.contradictory;
    failedSettled = -1;
    tethers.clear();
    settled.take(slots);
  }

  private void placeSettled(int first, int end) {
    for (int fixed = first; fixed < end && complete; fixed++) {
      placeSettled(fixed);
    }
  }

  private void placeSettled(int fixed) {
    settled.form(fixed, lots, timetable);
    group.ofSettled(fixed, settled);
    complete = settled.open(fixed, slots) && placer.place(group, tables.shop.horizonMinutes());
    if (complete) {
      keepSettled(fixed);
    } else {
      failedSettled = fixed;
    }
  }

  private void keepSettled(int fixed) {
    timetable.lots++;
    keepMembers();
    for (int run = settled.firstRun(fixed); run < timetable.runs; run++) {
      nextSegment[run] = settled.claims(run);
      finishIfDone(run);
    }
  }

  private void visit(int at, int job, int segment) {
    if (tables.distances.tethers(tables.jobKind[job])) {
      complete = tethers.place(tables.jobKind[job]);
      lastEnd = Math.max(lastEnd, tethers.lastEnd());
      return;
    }
    asked[job] |= 1 << segment;
    int run = runOfJob[job];
    if (run != UNPLACED) {
      askedOfRun[run] |= 1 << segment;
      advance(run);
    } else if (segment == 0 && !waiting.waits(tables.jobKind[job])) {
      formLot(at, job);
    }
  }

  /** Places the jobs that the list asked for earlier, while they still had to wait for others. */
  private void placeFreed() {
    while (waiting.freed() && complete) {
      lots.begin(waiting.next());
      placeLot();
    }
  }

  private void formLot(int at, int job) {
    lots.begin(job);
    for (int next = at + 1; next < order.length; next++) {
      int other = claims.job[order[next]];
      if (other == Claims.BREAK) {
        break;
      }
      boolean pours = claims.segment[order[next]] == 0 && runOfJob[other] == UNPLACED;
      if (pours && !(lots.sameFamily(other) && lots.join(other))) {
        break;
      }
    }
    placeLot();
  }

  /** Places the lot, smaller by a job at a time if it is too large for the hours there are. */
  private void placeLot() {
    int from = waiting.earliest(timetable.runKind[lots.firstRun()]);
    group.ofLot(lots.firstRun(), lots.minutes, from);
    while (!placer.place(group, limit())) {
      if (lots.count == 1) {
        complete = false;
        return;
      }
      lots.shrinkTo(lots.count - 1);
      group.ofLot(lots.firstRun(), lots.minutes, from);
    }
    keepLot();
  }

  private int limit() {
    int horizon = tables.shop.horizonMinutes();
    return lots.count == 1 ? horizon : Math.min(horizon, lastEnd + PATIENCE_MINUTES);
  }

  private void keepLot() {
    int first = lots.firstRun();
    timetable.lots++;
    for (int run = first; run < timetable.runs; run++) {
      timetable.repeatFirst(first, run);
      nextSegment[run] = 1;
    }
    keepMembers();
    for (int run = first; run < timetable.runs; run++) {
      finishIfDone(run);
      advance(run);
    }
  }

  private void keepMembers() {
    for (int run = lots.firstRun(); run < timetable.runs; run++) {
      askedOfRun[run] = 0;
    }
    for (int member = 0; member < lots.count; member++) {
      int job = lots.members[member];
      int run = lots.runOfKind(tables.jobKind[job]);
      runOfJob[job] = run;
      jobOfRun[run] = job;
      askedOfRun[run] |= asked[job];
    }
    keepGroup();
  }

  private void keepGroup() {
    for (int index = 0; index < group.count; index++) {
      int slot = group.slot[index];
      lastEnd = Math.max(lastEnd, timetable.end[slot]);
      timetable.attended += timetable.worker[slot] == Slots.NOBODY ? 0 : group.minutes[index];
    }
  }

  /** Places the next claims of a run, as far as the list has asked for them. */
  private void advance(int run) {
    int kind = timetable.runKind[run];
    while (complete
        && nextSegment[run] < tables.segments[kind]
        && (askedOfRun[run] >> nextSegment[run] & 1) != 0) {
      placeClaim(run, kind);
    }
  }

  private void placeClaim(int run, int kind) {
    int local = tables.firstOfSegment(kind, nextSegment[run]);
    int activity = tables.first[kind] + local;
    int before = timetable.runSlot[run] + local - 1;
    int from = timetable.end[before] - (local == 1 ? tables.familyTail[tables.family[kind]] : 0);
    int over = clocks[tables.waitClock[activity]].end(from, tables.waitHours[activity]);
    group.ofClaim(run, local, over);
    group.notBefore(settled);
    complete = placer.place(group, tables.shop.horizonMinutes());
    if (complete) {
      nextSegment[run]++;
      keepGroup();
      finishIfDone(run);
    }
  }

  private void finishIfDone(int run) {
    int kind = timetable.runKind[run];
    if (nextSegment[run] < tables.segments[kind]) {
      return;
    }
    int last = timetable.runSlot[run] + tables.size[kind] - 1;
    timetable.done(run, timetable.end[last] + tables.tail[kind]);
    waiting.ended(kind, timetable.end[last], asked);
  }
}
