package strickle.shop;

import java.util.List;

/**
 * A lot whose first activity is settled: who does it, when, and what is in it.
 *
 * @param worker index of the worker
 * @param start the minute it starts
 * @param parts what is in it, each kind once
 */
public record FixedLot(int worker, int start, List<Part> parts) {

  /** Copies the list. */
  public FixedLot {
    parts = List.copyOf(parts);
  }

  /**
   * Jobs of one kind.
   *
   * @param kind index of the kind
   * @param jobs how many, 1 or more
   */
  public record Part(int kind, int jobs) {}
}
