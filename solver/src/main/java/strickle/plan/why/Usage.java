package strickle.plan.why;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How much of one thing is taken when, and by which runs. */
final class Usage {

  /** A time no plan reaches: what needs more than there is has to wait for it. */
  static final int NEVER = Integer.MAX_VALUE / 4;

  /**
   * So much of it taken by a run.
   *
   * @param course the run
   * @param from first minute
   * @param to first minute no more
   * @param units units or places
   */
  record Holding(Course course, int from, int to, int units) {}

  /**
   * So much of it broken.
   *
   * @param from since which minute
   * @param to from which minute on it is whole again
   * @param units how much
   */
  record Lost(int from, int to, int units) {}

  private final int count;
  private final List<Holding> holdings;
  private final List<Lost> lost;

  /** Units taken from each minute on. */
  private final TreeMap<Integer, Integer> taken = new TreeMap<>();

  Usage(int count, List<Holding> holdings) {
    this(count, holdings, List.of());
  }

  /** A thing of which some is broken for a while, which is as if it were taken. */
  Usage(int count, List<Holding> holdings, List<Lost> lost) {
    this.count = count;
    this.holdings = holdings;
    this.lost = lost;
    TreeMap<Integer, Integer> changes = new TreeMap<>();
    for (Lost one : lost) {
      changes.merge(one.from(), one.units(), Integer::sum);
      changes.merge(one.to(), -one.units(), Integer::sum);
    }
    for (Holding holding : holdings) {
      changes.merge(holding.from(), holding.units(), Integer::sum);
      changes.merge(holding.to(), -holding.units(), Integer::sum);
    }
    int sum = 0;
    taken.put(Integer.MIN_VALUE, 0);
    for (Map.Entry<Integer, Integer> change : changes.entrySet()) {
      sum += change.getValue();
      taken.put(change.getKey(), sum);
    }
  }

  int count() {
    return count;
  }

  /**
   * The end of the last stretch within {@code from} to {@code to} in which not so many units are
   * free; {@code from} itself when they are all along. Whoever needs them up to {@code to} at least
   * cannot begin before.
   */
  int clearOf(int from, int to, int units) {
    int clear = from;
    Integer at = taken.floorKey(from);
    while (at != null && (at < to || at == clear)) {
      Integer next = taken.higherKey(at);
      if (taken.get(at) + units > count) {
        clear = next == null ? NEVER : next;
      }
      at = next;
    }
    return clear;
  }

  /**
   * How many units are missing at the worst moment within {@code from} to {@code to}, 0 or more.
   */
  int missing(int from, int to, int units) {
    return taken.subMap(taken.floorKey(from), true, Math.max(from, to - 1), true).values().stream()
        .mapToInt(used -> used + units - count)
        .reduce(0, Math::max);
  }

  /** Who has some of it at a minute, whoever gives it back first coming first. */
  List<Holding> at(int minute) {
    return holdings.stream()
        .filter(holding -> holding.from() <= minute && minute < holding.to())
        .sorted(Comparator.comparingInt(Holding::to))
        .toList();
  }

  /** Who takes some of it within a time, whoever takes it first coming first. */
  List<Holding> within(int from, int to) {
    return holdings.stream()
        .filter(holding -> holding.from() < to && from < holding.to())
        .sorted(Comparator.comparingInt(Holding::from))
        .toList();
  }

  /** Whether some of it is broken at a minute. */
  boolean isBrokenAt(int minute) {
    return lost.stream().anyMatch(one -> one.from() <= minute && minute < one.to());
  }

  int takenAt(int minute) {
    return taken.floorEntry(minute).getValue();
  }
}
