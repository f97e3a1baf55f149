package strickle.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import strickle.shop.FixedLot;
import strickle.shop.Schedule;
import strickle.shop.Shop;

/** Settles lots of a plan in a shop, with everything that becomes of them. */
final class Staying {

  private Staying() {}

  /**
   * The studio with some lots of a plan settled from pour to last step; the others may go
   * elsewhere.
   *
   * @param plan one whose lots are all made in this studio
   * @param lots ids of those that stay
   */
  static StudioShop on(StudioShop studio, Plan plan, Set<String> lots) {
    List<FixedLot> fixed = new ArrayList<>();
    List<Schedule.Lot> all = PresentLots.of(studio, plan);
    for (int i = 0; i < all.size(); i++) {
      if (lots.contains(plan.lots().get(i).id())) {
        fixed.add(fixed(all.get(i)));
      }
    }
    List<FixedLot> settled = List.copyOf(fixed);
    studio.shop().fixed().stream()
        .filter(pin -> settled.stream().noneMatch(lot -> isSame(lot, pin)))
        .forEach(fixed::add);
    return studio.with(with(studio.shop(), fixed));
  }

  private static boolean isSame(FixedLot one, FixedLot other) {
    return one.worker() == other.worker() && one.start() == other.start();
  }

  private static FixedLot fixed(Schedule.Lot lot) {
    List<FixedLot.Part> parts = lot.runs().stream().map(Staying::part).toList();
    Schedule.Placed pour = lot.first();
    return new FixedLot(pour.worker(), pour.start(), OptionalInt.empty(), parts, false);
  }

  private static FixedLot.Part part(Schedule.Run run) {
    List<FixedLot.Place> rest =
        run.rest().stream()
            .map(one -> new FixedLot.Place(one.worker(), one.start(), one.end()))
            .toList();
    return new FixedLot.Part(run.kind(), run.jobs(), rest, List.of(), run.jobs());
  }

  private static Shop with(Shop shop, List<FixedLot> fixed) {
    return new Shop(
        shop.horizonMinutes(),
        shop.lateUnitMinutes(),
        shop.workers(),
        shop.clocks(),
        shop.resources(),
        shop.families(),
        shop.kinds(),
        shop.links(),
        shop.dues(),
        fixed);
  }
}
