package strickle.shop;

/**
 * Serial schedule generation: turns any order of the claims into a schedule that keeps every rule,
 * by placing claim after claim as early as what is already placed allows. Once its arrays are as
 * long as it ever needs them it allocates nothing.
 *
 * <p>Source: R. Kolisch, Serial and parallel resource-constrained project scheduling methods
 * revisited, European Journal of Operational Research 90 (1996) 320-333; the lots, pauses and
 * most-waits are this project's own.
 */
final class Decoder {

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

  private final Loose loose;
  private final Runs runs;
  private final Checkpoints checkpoints;
  private int[] order = {};
  private int failedSettled;
  private boolean complete;
  private long decoded;

  Decoder(Tables tables) {
    this(tables, Checkpoints.FEWEST_CLAIMS);
  }

  /**
   * A decoder.
   *
   * @param fewest of a list of so many claims it decodes neighbours from checkpoints, once {@link
   *     #takenOver} says of which order; but never where anything is let go again or tethered, of
   *     which they know nothing
   */
  Decoder(Tables tables, int fewest) {
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
    this.loose = new Loose(tables, timetable, slots, placer);
    this.runs = new Runs(tables, timetable, group, placer, settled, loose, waiting);
    State state = new State(timetable, runs, waiting, slots);
    boolean can = !loose.any() && tables.distances.tethered == 0 && claims.count() >= fewest;
    this.checkpoints = new Checkpoints(state, can ? claims.count() : 0);
  }

  Claims claims() {
    return claims;
  }

  Timetable timetable() {
    return timetable;
  }

  /** One of the jobs in a run of the schedule generated last. */
  int jobOf(int run) {
    return runs.jobOf[run];
  }

  /** The run that a job is in, in the schedule generated last. */
  int runOf(int job) {
    return runs.ofJob[job];
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
    order = claimsInOrder;
    loose.forget();
    do {
      decodeOnce();
    } while (!complete && runs.again());
    return complete;
  }

  private void decodeOnce() {
    decoded++;
    int from = checkpoints.resume(order);
    complete = true;
    failedSettled = -1;
    if (from < 0) {
      begin();
    }
    placeFrom(Math.max(0, from));
    complete = complete && tethers.finish(runs.ofJob, runs.jobOf);
    if (complete) {
      checkpoints.complete();
    }
  }

  private void placeFrom(int from) {
    for (int at = from; at < order.length && complete && !checkpoints.pass(at); at++) {
      int job = claims.job[order[at]];
      if (job != Claims.BREAK) {
        visit(at, job, claims.segment[order[at]]);
        placeFreed();
      }
    }
  }

  /** Places all that is settled in a shop where nothing is placed. */
  private void begin() {
    clear();
    checkpoints.restart();
    placeSettled(0, settled.underWay());
    slots.loseWhatIsLost();
    placeSettled(settled.underWay(), settled.count());
  }

  /** Notes that the search is now at the order decoded last, and will try its neighbours. */
  void takenOver(int[] claimsInOrder) {
    checkpoints.keep(claimsInOrder);
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
    runs.clear();
    waiting.clear();
    complete = !tables.distances.contradictory;
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
      runs.keepSettled(fixed, lots);
    } else {
      failedSettled = fixed;
    }
  }

  private void visit(int at, int job, int segment) {
    if (tables.distances.tethers(tables.jobKind[job])) {
      complete = tethers.place(tables.jobKind[job]);
      runs.lastEnd = Math.max(runs.lastEnd, tethers.lastEnd());
      return;
    }
    runs.asked[job] |= 1 << segment;
    int run = runs.ofJob[job];
    if (run != Runs.UNPLACED) {
      complete = runs.ask(run, segment);
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
      checkpoints.lookedAt(next);
      if (other == Claims.BREAK) {
        break;
      }
      boolean pours = claims.segment[order[next]] == 0 && runs.ofJob[other] == Runs.UNPLACED;
      if (pours && !(lots.sameFamily(other) && lots.join(other))) {
        break;
      }
    }
    placeLot();
  }

  /** Places the lot, smaller by a job at a time if it is too large for the hours there are. */
  private void placeLot() {
    if (!runs.clearTheWay(lots.firstRun())) {
      complete = false;
      return;
    }
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
    complete = runs.keepLot(lots);
  }

  private int limit() {
    int horizon = tables.shop.horizonMinutes();
    return lots.count == 1 ? horizon : Math.min(horizon, runs.lastEnd + PATIENCE_MINUTES);
  }
}
