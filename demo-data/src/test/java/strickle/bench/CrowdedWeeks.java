package strickle.bench;

import strickle.book.Book;

/** Generated weeks for the tests of other packages. */
public final class CrowdedWeeks {

  private CrowdedWeeks() {}

  /**
   * A generated week.
   *
   * @param crowded with one set of each form and half the time for each order
   */
  public static Book book(int castings, long seed, boolean crowded) {
    return new ExactWeekSample(castings, seed, crowded).book();
  }
}
