package strickle.plan.audit;

import java.util.OptionalLong;
import strickle.book.Order;

/**
 * When an order is served, by the rules.
 *
 * @param order the order
 * @param ready minute its last piece is ready; empty when the runs of the plan bring too few
 * @param lateMinutes minutes from due to ready, 0 when on time; empty when {@code ready} is
 */
record Service(Order order, OptionalLong ready, OptionalLong lateMinutes) {

  static Service of(Order order, long ready, long due) {
    return new Service(order, OptionalLong.of(ready), OptionalLong.of(Math.max(0, ready - due)));
  }

  static Service never(Order order) {
    return new Service(order, OptionalLong.empty(), OptionalLong.empty());
  }

  boolean isLate() {
    return lateMinutes.orElse(0) > 0;
  }
}
