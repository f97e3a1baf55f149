package strickle.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import strickle.shop.Due;
import strickle.shop.Shop;

/** Puts aims in the place of a shop's due dates; who waits for how many castings stays. */
final class Aims {

  /** Aims are minded to the minute: nobody's hour is spent to win less. */
  private static final int TO_THE_MINUTE = 1;

  private Aims() {}

  /** The studio with an aim for each order; orders without one may be ready whenever. */
  static StudioShop on(StudioShop studio, List<Aim> aims) {
    Map<String, Aim> byOrder =
        aims.stream().collect(Collectors.toMap(Aim::order, Function.identity()));
    List<Due> dues = new ArrayList<>();
    for (int i = 0; i < studio.orders().size(); i++) {
      Due due = studio.shop().dues().get(i);
      Aim aim = byOrder.get(studio.orders().get(i).id());
      dues.add(aim == null ? new Due(due.name(), 0, 0, due.needs()) : due(studio, due, aim));
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
