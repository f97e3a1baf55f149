package strickle.book;

import java.math.BigDecimal;

/**
 * One physical thing that shapes: a silicone mould, a tray, a ring, an inner core.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param count how many of it there are, 1 to 1000
 * @param costEach what one cost, in the book's currency, 0 or more
 * @param lifeCastings how many castings one lasts, 1 to 1000000
 */
public record Form(String id, String name, int count, BigDecimal costEach, int lifeCastings) {

  private static final int LONGEST_LIFE = 1_000_000;

  /**
   * Checks the form.
   *
   * @throws Faulty with every fault, paths relative to the form
   */
  public Form {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    check.whole(".count", count, 1, Check.MOST_AT_ONCE);
    check.amount(".costEach", costEach);
    check.whole(".lifeCastings", lifeCastings, 1, LONGEST_LIFE);
    check.done();
  }
}
