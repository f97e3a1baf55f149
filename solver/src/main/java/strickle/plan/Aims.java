package strickle.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import strickle.book.Order;
import strickle.shop.Due;
import strickle.shop.Shop;

/** Puts aims in the place of a shop's due dates; who waits for how many castings stays. */
final class Aims {

  /** Aims are minded to the minute: nobody's hour is spent to win less. */
  private static final int TO_THE_MINUTE = 1;

  private Aims() {}

  /**
   * The studio with these aims for its orders; an order may have several, and one without any may
   * be ready whenever.
   */
  static StudioShop on(StudioShop studio, List<Aim> aims) {
    List<String> orders = studio.orders().stream().map(Order::id).toList();
    List<Due> dues = new ArrayList<>();
    // The first of each order stands where its due stood, as others look there for when it is met.
    studio.shop().dues().forEach(due -> dues.add(new Due(due.name(), 0, 0, due.needs())));
    Set<Integer> taken = new HashSet<>();
    for (Aim aim : aims) {
      int place = orders.indexOf(aim.order());
      Due due = due(studio, studio.shop().dues().get(place), aim);
      if (taken.add(place)) {
        dues.set(place, due);
      } else {
        dues.add(due);
      }
    }
    return new StudioShop(
        studio.book(),
        studio.time(),
        studio.pieces(),
        studio.orders(),
        studio.recipes(),
        with(studio.shop(), dues),
        studio.fixedPins(),
        1);
  }

  private static Due due(StudioShop studio, Due due, Aim aim) {
    int at = (int) studio.time().minute(aim.at().toInstant());
    return new Due(due.name(), at, aim.costPerMinute(), due.needs());
  }

  private static Shop with(Shop shop, List<Due> dues) {
    return new Shop(
        shop.horizonMinutes(),
        TO_THE_MINUTE,
        shop.workers(),
        shop.clocks(),
        shop.resources(),
        shop.families(),
        shop.kinds(),
        shop.links(),
        dues,
        shop.fixed());
  }
}
