package strickle.shop;

import java.util.List;
import java.util.OptionalInt;

/**
 * A lot of which the first activity is settled, and perhaps more: who does it, when, and what is in
 * it. What is settled may lie before minute 0 and outside its worker's hours; of their calendar it
 * takes those minutes that lie in it.
 *
 * @param worker index of the worker of the first activity
 * @param start the minute the first activity starts
 * @param end the minute it ends; empty: it takes the minutes it needs, all of them open ones
 * @param parts what is in it, each kind once
 * @param begun whether it is under way: then a most-wait that begins with the end of a settled
 *     activity gives way when nothing else makes room, and what is settled may be more than there
 *     is room for
 */
public record FixedLot(int worker, int start, OptionalInt end, List<Part> parts, boolean begun) {

  /** Refuses an end before the start and copies the list. */
  public FixedLot {
    if (end.orElse(start) < start) {
      throw new IllegalArgumentException("an end at or after " + start + ", not " + end);
    }
    parts = List.copyOf(parts);
  }

  /** A lot to come of which the first activity alone is settled; it takes the minutes it needs. */
  public FixedLot(int worker, int start, List<Part> parts) {
    this(worker, start, OptionalInt.empty(), parts, false);
  }

  /**
   * Jobs of one kind.
   *
   * @param kind index of the kind
   * @param jobs how many, 1 or more
   * @param rest the settled activities after the first, in order
   * @param notBefore for each activity after those the earliest minute it may start; or empty
   * @param worth for how many jobs they count towards a due date, from 0 to {@code jobs}
   */
  public record Part(int kind, int jobs, List<Place> rest, List<Integer> notBefore, double worth) {

    /** Refuses what jobs cannot be worth and copies the lists. */
    public Part {
      if (!(worth >= 0 && worth <= jobs)) {
        throw new IllegalArgumentException("worth of 0 to " + jobs + " jobs, not " + worth);
      }
      rest = List.copyOf(rest);
      notBefore = List.copyOf(notBefore);
    }

    /** Jobs of which nothing is settled but the first activity. */
    public Part(int kind, int jobs) {
      this(kind, jobs, List.of(), List.of(), jobs);
    }
  }

  /**
   * A settled activity.
   *
   * @param worker index of the worker
   * @param start the minute it starts
   * @param end the minute it ends, not before it starts
   */
  public record Place(int worker, int start, int end) {

    /** Refuses an end before the start. */
    public Place {
      if (end < start) {
        throw new IllegalArgumentException("an end at or after " + start + ", not " + end);
      }
    }
  }
}
