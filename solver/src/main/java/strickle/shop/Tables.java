package strickle.shop;

import java.util.Arrays;
import java.util.List;

/**
 * A shop flattened into primitive arrays, so that the decoder reads numbers that lie side by side.
 * The activities of all kinds stand one after the other; those of a kind begin at {@code
 * first[kind]}, and so do its jobs at {@code jobFirst[kind]}.
 */
final class Tables {

  /** Stands for "no limit" among minutes. */
  static final int NO_LIMIT = Integer.MAX_VALUE;

  final Shop shop;
  final int kinds;
  final int jobs;

  final int[] family;
  final int[] tail;
  final int[] first;
  final int[] size;
  final int[] jobFirst;
  final int[] jobKind;
  final long[][] amounts;

  final int[] fixedMinutes;
  final int[] eachMinutes;
  final long[] workers;
  final boolean[] pauses;
  final int[] waitClock;
  final double[] waitHours;
  final int[] atMost;

  /** The first minute each activity may start. */
  final int[] notBefore;

  /** Which claim of its job an activity belongs to: 0 up to {@code segments[kind] - 1}. */
  final int[] segment;

  final int[] segments;

  /** Which activities of a kind are placed together: those with the same number. */
  final int[] tie;

  /** Whether an activity is placed with the one before it and then let go again. */
  final boolean[] loose;

  final int[] sharedMinutes;
  final int[] familyTail;
  final int[] longest;
  final long[][] limits;

  final HoldTables holds;
  final LinkTables links;
  final Distances distances;
  final DueTables dues;

  Tables(Shop shop) {
    this.shop = shop.checked();
    List<Kind> all = shop.kinds();
    kinds = all.size();
    family = all.stream().mapToInt(Kind::family).toArray();
    tail = all.stream().mapToInt(Kind::tailMinutes).toArray();
    size = all.stream().mapToInt(kind -> kind.chain().size()).toArray();
    first = sums(size);
    jobFirst = sums(all.stream().mapToInt(Kind::jobs).toArray());
    jobs = jobFirst[kinds];
    jobKind = owners(jobFirst);
    amounts = all.stream().map(kind -> longs(kind.amounts())).toArray(long[][]::new);
    List<Activity> chain = all.stream().flatMap(kind -> kind.chain().stream()).toList();
    fixedMinutes = chain.stream().mapToInt(Activity::fixedMinutes).toArray();
    eachMinutes = chain.stream().mapToInt(Activity::eachMinutes).toArray();
    workers = chain.stream().mapToLong(activity -> set(activity.workers())).toArray();
    pauses = new boolean[chain.size()];
    for (int i = 0; i < pauses.length; i++) {
      pauses[i] = chain.get(i).pauses();
    }
    List<Wait> waits = chain.stream().map(Activity::before).toList();
    waitClock = waits.stream().mapToInt(Wait::clock).toArray();
    waitHours = waits.stream().mapToDouble(Wait::hours).toArray();
    notBefore = chain.stream().mapToInt(Activity::notBefore).toArray();
    atMost = waits.stream().mapToInt(wait -> wait.atMostMinutes().orElse(NO_LIMIT)).toArray();
    List<Family> families = shop.families();
    sharedMinutes = families.stream().mapToInt(Family::sharedMinutes).toArray();
    familyTail = families.stream().mapToInt(Family::tailMinutes).toArray();
    longest = families.stream().mapToInt(Family::longestMinutes).toArray();
    limits = families.stream().map(family -> longs(family.limits())).toArray(long[][]::new);
    segment = Segments.of(shop);
    tie = Segments.ties(shop);
    loose = new boolean[segment.length];
    segments = new int[kinds];
    for (int kind = 0; kind < kinds; kind++) {
      segments[kind] = segment[first[kind] + size[kind] - 1] + 1;
      for (int i = first[kind] + 1; i < first[kind] + size[kind]; i++) {
        loose[i] = tie[i] == tie[i - 1] && segment[i] != segment[i - 1];
      }
    }
    holds = new HoldTables(this);
    links = new LinkTables(shop);
    distances = new Distances(this);
    dues = new DueTables(shop);
  }

  /** Minutes of activity {@code index} for a run of {@code jobs}. */
  int minutes(int index, int jobs) {
    return fixedMinutes[index] + eachMinutes[index] * jobs;
  }

  /** The place in its kind's chain, counted from 0, of the first activity of a claim. */
  int firstOfSegment(int kind, int claim) {
    int local = 0;
    while (segment[first[kind] + local] != claim) {
      local++;
    }
    return local;
  }

  /** Running sums, beginning with 0, one longer than the counts. */
  static int[] sums(int[] counts) {
    int[] sums = new int[counts.length + 1];
    for (int i = 0; i < counts.length; i++) {
      sums[i + 1] = sums[i] + counts[i];
    }
    return sums;
  }

  /** Whose each of so many things is, given the sums of everybody's counts. */
  static int[] owners(int[] sums) {
    int[] owners = new int[sums[sums.length - 1]];
    for (int owner = 0; owner + 1 < sums.length; owner++) {
      Arrays.fill(owners, sums[owner], sums[owner + 1], owner);
    }
    return owners;
  }

  private static long[] longs(List<Long> values) {
    return values.stream().mapToLong(Long::longValue).toArray();
  }

  private static long set(List<Integer> workers) {
    return workers.stream().mapToLong(worker -> 1L << worker).reduce(0, (a, b) -> a | b);
  }
}
