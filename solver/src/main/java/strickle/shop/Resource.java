package strickle.shop;

import java.util.List;

/**
 * A renewable resource: it is held for a while and then free again.
 *
 * @param name what a person calls it
 * @param capacity how many units there are at first, 0 or more
 * @param lost units that are gone from some minute on, for good or for a while; lots under way are
 *     exempt from that
 */
public record Resource(String name, int capacity, List<Lost> lost) {

  /** Refuses a capacity below zero. */
  public Resource {
    if (capacity < 0) {
      throw new IllegalArgumentException(name + ": capacity 0 or more, not " + capacity);
    }
    lost = List.copyOf(lost);
  }

  /** A resource of which nothing is lost. */
  public Resource(String name, int capacity) {
    this(name, capacity, List.of());
  }

  /** How many units there are in the end, 0 or more. */
  public int left() {
    return Math.max(
        0,
        capacity
            - lost.stream()
                .filter(one -> one.to() == Integer.MAX_VALUE)
                .mapToInt(Lost::units)
                .sum());
  }

  /**
   * Units that are gone.
   *
   * @param from since which minute
   * @param units how many, 1 or more
   * @param to the minute from which they are there again; {@link Integer#MAX_VALUE}: never
   */
  public record Lost(int from, int units, int to) {

    /** Refuses a loss of nothing. */
    public Lost {
      if (units < 1) {
        throw new IllegalArgumentException("1 unit lost or more, not " + units);
      }
      if (to <= from) {
        throw new IllegalArgumentException("a minute after " + from + ", not " + to);
      }
    }

    /** Units that are gone for good. */
    public Lost(int from, int units) {
      this(from, units, Integer.MAX_VALUE);
    }
  }
}
