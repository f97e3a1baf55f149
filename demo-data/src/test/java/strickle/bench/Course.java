package strickle.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** How a plan became better with time. */
final class Course {

  private static final BigDecimal NEARLY = new BigDecimal("1.01");

  /**
   * A better plan.
   *
   * @param seconds since planning was asked for
   * @param late its weighted late hours
   * @param attended its attended minutes
   */
  record Moment(double seconds, BigDecimal late, long attended) {

    /** Whether neither is more than 1 % above that of another. */
    boolean isNear(Moment other) {
      return late.compareTo(other.late.multiply(NEARLY)) <= 0
          && BigDecimal.valueOf(attended)
                  .compareTo(BigDecimal.valueOf(other.attended).multiply(NEARLY))
              <= 0;
    }
  }

  private final List<Moment> moments = new ArrayList<>();

  /** Notes a plan that is better than the one before. */
  synchronized void add(Moment moment) {
    moments.add(moment);
  }

  /** Seconds until there was a plan. */
  synchronized double firstSeconds() {
    return moments.getFirst().seconds();
  }

  /** Seconds from which on every plan was near the last. */
  synchronized double nearSeconds() {
    Moment last = moments.getLast();
    int first = moments.size() - 1;
    while (first > 0 && moments.get(first - 1).isNear(last)) {
      first--;
    }
    return moments.get(first).seconds();
  }
}
