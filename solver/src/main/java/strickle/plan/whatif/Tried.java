package strickle.plan.whatif;

import java.util.Comparator;
import java.util.Objects;
import strickle.book.Book;
import strickle.plan.Plan;
import strickle.plan.Totals;

/**
 * What came of a change.
 *
 * @param change the change
 * @param words the change in a maker's words
 * @param cost what it costs
 * @param book the book with the change made
 * @param plan the best plan found for that book
 */
public record Tried(Change change, String words, Cost cost, Book book, Plan plan) {

  /** What helps more comes first: less lateness, then less handwork, then an earlier last piece. */
  public static final Comparator<Totals> BY_HELP =
      Comparator.comparing(Totals::weightedLateHours)
          .thenComparingLong(Totals::attendedMinutes)
          .thenComparing(totals -> totals.lastReady().toInstant());

  /** Refuses a missing part. */
  public Tried {
    Objects.requireNonNull(change, "change");
    Objects.requireNonNull(words, "words");
    Objects.requireNonNull(cost, "cost");
    Objects.requireNonNull(book, "book");
    Objects.requireNonNull(plan, "plan");
  }

  /**
   * Whether it makes lateness, or else handwork, or else the last piece better than other totals.
   */
  public boolean helps(Totals other) {
    return BY_HELP.compare(plan.totals(), other) < 0;
  }

  /** Whether it changes any of lateness, handwork and the last piece, against other totals. */
  public boolean changes(Totals other) {
    return BY_HELP.compare(plan.totals(), other) != 0;
  }
}
