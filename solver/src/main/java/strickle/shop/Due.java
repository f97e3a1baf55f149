package strickle.shop;

import java.util.List;

/**
 * A due date: so many jobs of some kinds must be done by then.
 *
 * @param name what a person calls it
 * @param at the minute it is due
 * @param weight what each started late unit costs, 0 or more
 * @param needs which jobs it waits for; empty: it is met from the start
 */
public record Due(String name, int at, long weight, List<Need> needs) {

  /** Refuses a negative weight. */
  public Due {
    if (weight < 0) {
      throw new IllegalArgumentException(name + ": weight of 0 or more, not " + weight);
    }
    needs = List.copyOf(needs);
  }

  /**
   * The first {@code count} jobs of a kind to be done, whichever they are.
   *
   * @param kind index of the kind
   * @param count 1 up to the jobs of the kind
   * @param worth how many jobs exactly would do, at most {@code count}; it matters only where some
   *     jobs of settled lots are worth less than others
   */
  public record Need(int kind, int count, double worth) {

    /** A need of whole jobs. */
    public Need(int kind, int count) {
      this(kind, count, count);
    }
  }
}
