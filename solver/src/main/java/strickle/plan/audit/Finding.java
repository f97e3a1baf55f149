package strickle.plan.audit;

import java.util.Objects;

/**
 * One thing that is wrong with a plan.
 *
 * @param rule the number of the rule it breaks, 1 to 10, in the order in which the page on the two
 *     files lists what makes a plan valid; 0 for what that page asks of a plan outside the list
 *     (names, whole minutes and offsets, weigh-out, ballast, listed waits, totals)
 * @param where which part of the plan, such as {@code task L1/pour} or {@code person ana}
 * @param text what is found there and what the rule asks for
 */
public record Finding(int rule, String where, String text) {

  /** Refuses a rule that does not exist. */
  public Finding {
    if (rule < 0 || rule > 10) {
      throw new IllegalArgumentException("a rule from 0 to 10, not " + rule);
    }
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(text, "text");
  }

  @Override
  public String toString() {
    return "rule " + rule + ", " + where + ": " + text;
  }
}
