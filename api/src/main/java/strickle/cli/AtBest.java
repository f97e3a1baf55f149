package strickle.cli;

import java.math.BigDecimal;
import strickle.book.Book;
import strickle.plan.Bounding;
import strickle.plan.Plan;

/** How far a plan is from what no plan can beat, in a few words. */
final class AtBest {

  private AtBest() {}

  /** The words; lateness is only looked into when there is any. */
  static String of(Book book, Plan plan) {
    BigDecimal late = plan.totals().weightedLateHours();
    BigDecimal leastLate = late.signum() == 0 ? late : Bounding.lateHours(book, plan);
    long least = Bounding.attendedMinutes(book, plan);
    boolean asLate = late.compareTo(leastLate) == 0;
    if (asLate && least == plan.totals().attendedMinutes()) {
      return "nothing more to win by planning longer";
    }
    String fewer = asLate ? "" : "fewer than " + leastLate.toPlainString() + " late hours or ";
    return "no plan has " + fewer + "less than " + Words.work(least) + " of handwork";
  }
}
