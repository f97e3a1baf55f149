package strickle.shop;

import java.util.List;

/**
 * Looks for the earliest place an activity fits: a worker who is open and free for as long as it
 * takes, and every resource that it opens free from its start.
 */
final class Slots {

  /** The worker of an activity that needs nobody. */
  static final int NOBODY = -1;

  private static final int NONE = -1;

  private final Tables tables;
  private final Calendar[] calendars;
  private final Busy[] busy;
  private final Usage[] usage;
  private final int[] lostResource;
  private final int[] lostFrom;
  private final int[] lostTo;
  private final int[] lostUnits;

  /**
   * Whether an activity that another has pushed rather pauses than starts too late; otherwise it
   * goes where it ends first even if that is too late, and the one before it is pushed as well.
   */
  boolean pausesRather;

  /** What {@link #find} found. */
  int worker;

  int worked;
  int start;
  int end;

  Slots(Tables tables) {
    this.tables = tables;
    this.calendars = tables.shop.workers().toArray(Calendar[]::new);
    this.busy = new Busy[calendars.length];
    for (int i = 0; i < busy.length; i++) {
      busy[i] = new Busy();
    }
    List<Resource> resources = tables.shop.resources();
    this.usage = new Usage[resources.size()];
    for (int i = 0; i < usage.length; i++) {
      usage[i] = new Usage(resources.get(i).capacity());
    }
    int[] losses = resources.stream().mapToInt(one -> one.lost().size()).toArray();
    this.lostResource = Tables.owners(Tables.sums(losses));
    List<Resource.Lost> lost = resources.stream().flatMap(one -> one.lost().stream()).toList();
    this.lostFrom = lost.stream().mapToInt(Resource.Lost::from).toArray();
    this.lostTo = lost.stream().mapToInt(Resource.Lost::to).toArray();
    this.lostUnits = lost.stream().mapToInt(Resource.Lost::units).toArray();
  }

  void clear() {
    for (Busy one : busy) {
      one.clear();
    }
    for (Usage one : usage) {
      one.clear();
    }
  }

  void save(Memo memo) {
    for (Busy one : busy) {
      one.save(memo);
    }
    for (Usage one : usage) {
      one.save(memo);
    }
  }

  void load(Memo memo) {
    for (Busy one : busy) {
      one.load(memo);
    }
    for (Usage one : usage) {
      one.load(memo);
    }
  }

  /** Writes down what is known of queues. */
  void saveHints(Memo memo) {
    for (Busy one : busy) {
      one.saveHints(memo);
    }
    for (Usage one : usage) {
      one.saveHints(memo);
    }
  }

  void loadHints(Memo memo) {
    for (Busy one : busy) {
      one.loadHints(memo);
    }
    for (Usage one : usage) {
      one.loadHints(memo);
    }
  }

  /** Takes what is lost of the resources away, once all that is exempt from that is placed. */
  void loseWhatIsLost() {
    for (int i = 0; i < lostResource.length; i++) {
      usage[lostResource[i]].add(lostFrom[i], lostTo[i], lostUnits[i]);
    }
  }

  Usage usage(int resource) {
    return usage[resource];
  }

  /** Takes the place found last. */
  void take(int minutes) {
    take(worker, worked, minutes);
  }

  void take(int who, int from, int minutes) {
    if (who != NOBODY) {
      busy[who].take(from, from + minutes);
    }
  }

  void give(int who, int from, int minutes) {
    if (who != NOBODY) {
      busy[who].give(from, from + minutes);
    }
  }

  /**
   * Finds the place of a group's activity that ends first among those that start by {@code by}; if
   * there is none, the one that starts first.
   *
   * @param limit no place may end after this minute
   * @return whether there is a place at all
   */
  boolean find(Group group, int index, int from, int by, int limit) {
    long workers = tables.workers[group.activity[index]];
    if (workers == 0) {
      return findWithoutWorker(group, index, from, limit);
    }
    // Whoever does it, what it opens has to be free.
    int free = resourcesFree(group, index, from);
    worker = NONE;
    start = Integer.MAX_VALUE;
    end = Integer.MAX_VALUE;
    for (long rest = workers; rest != 0; rest &= rest - 1) {
      tryWorker(group, index, Long.numberOfTrailingZeros(rest), free, by, limit);
    }
    return worker != NONE;
  }

  private void tryWorker(Group group, int index, int who, int from, int by, int limit) {
    Calendar calendar = calendars[who];
    int minutes = group.minutes[index];
    boolean pauses = tables.pauses[group.activity[index]];
    boolean pushed = group.earliestEnd[index] > 0;
    int place = Math.max(calendar.worked(from), forEnd(calendar, group, index));
    while (true) {
      place = pauses ? busy[who].firstFree(place, minutes) : whole(who, place, minutes);
      if (place + minutes > calendar.workingMinutes()) {
        return;
      }
      int window = calendar.windowOf(place);
      int at = calendar.startOf(place, window);
      int until = calendar.endOf(place + minutes, window);
      if (until > limit || !isBetter(pushed, at, until, by)) {
        // Later it would be no better.
        return;
      }
      int free = resourcesFree(group, index, at);
      if (free == at) {
        worker = who;
        worked = place;
        start = at;
        end = until;
        return;
      }
      place = calendar.worked(free);
    }
  }

  /** Whether a place is better than the best so far, for an activity that may have been pushed. */
  private boolean isBetter(boolean pushed, int placeStart, int placeEnd, int by) {
    if (pushed && !pausesRather) {
      return placeEnd < end;
    }
    if (placeStart > by) {
      return placeStart < start;
    }
    return start > by || placeEnd < end;
  }

  /** The first free stretch that lies inside one window. */
  private int whole(int who, int from, int minutes) {
    Calendar calendar = calendars[who];
    int place = from;
    while (true) {
      place = busy[who].firstFree(place, minutes);
      if (place + minutes > calendar.workingMinutes()) {
        return place;
      }
      int next = calendar.workedBefore(calendar.windowOf(place) + 1);
      if (place + minutes <= next) {
        return place;
      }
      place = next;
    }
  }

  private static int forEnd(Calendar calendar, Group group, int index) {
    int earliestEnd = group.earliestEnd[index];
    if (earliestEnd == 0) {
      return 0;
    }
    int done = calendar.worked(earliestEnd);
    if (done == 0 || (done <= calendar.workingMinutes() && calendar.endOf(done) < earliestEnd)) {
      done++;
    }
    return Math.max(0, done - group.minutes[index]);
  }

  private boolean findWithoutWorker(Group group, int index, int from, int limit) {
    int minutes = group.minutes[index];
    int at = Math.max(from, group.earliestEnd[index] - minutes);
    worker = NOBODY;
    worked = 0;
    start = resourcesFree(group, index, at);
    end = start + minutes;
    return start <= limit - minutes;
  }

  /** The first minute at or after {@code from} when all that the activity opens is free at once. */
  private int resourcesFree(Group group, int index, int from) {
    int at = from;
    int settledAt = -1;
    while (settledAt != at) {
      settledAt = at;
      for (int open = group.openFirst[index]; open < group.openFirst[index + 1]; open++) {
        Usage held = usage[group.openResource[open]];
        at = held.firstFree(at, group.openMinutes[open], group.openUnits[open]);
      }
    }
    return at;
  }
}
