package strickle.plan;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import strickle.shop.Activity;
import strickle.shop.FixedLot;
import strickle.shop.Kind;
import strickle.shop.Shop;
import strickle.shop.Wait;

/** Shops that differ from another in what is to be done, in their most-waits or settled lots. */
final class Limits {

  private Limits() {}

  /** The same shop with one job of one kind and nothing else to do. */
  static Shop only(Shop shop, int kind) {
    return with(
        shop,
        IntStream.range(0, shop.kinds().size())
            .mapToObj(i -> with(shop.kinds().get(i), i == kind ? 1 : 0))
            .toList());
  }

  /** The same shop without the most-waits before those activities of a kind. */
  static Shop without(Shop shop, int kind, IntPredicate activities) {
    return with(
        shop,
        IntStream.range(0, shop.kinds().size())
            .mapToObj(
                i -> i == kind ? without(shop.kinds().get(i), activities) : shop.kinds().get(i))
            .toList());
  }

  /** The same shop with these settled lots. */
  static Shop settled(Shop shop, List<FixedLot> fixed) {
    return with(shop, shop.kinds(), fixed);
  }

  private static Shop with(Shop shop, List<Kind> kinds) {
    return with(shop, kinds, List.of());
  }

  private static Shop with(Shop shop, List<Kind> kinds, List<FixedLot> fixed) {
    return new Shop(
        shop.horizonMinutes(),
        shop.lateUnitMinutes(),
        shop.workers(),
        shop.clocks(),
        shop.resources(),
        shop.families(),
        kinds,
        List.of(),
        List.of(),
        fixed);
  }

  private static Kind with(Kind kind, int jobs) {
    return new Kind(
        kind.name(), kind.family(), jobs, kind.amounts(), kind.chain(), kind.tailMinutes());
  }

  private static Kind without(Kind kind, IntPredicate activities) {
    List<Activity> chain =
        IntStream.range(0, kind.chain().size())
            .mapToObj(
                i -> activities.test(i) ? unlimited(kind.chain().get(i)) : kind.chain().get(i))
            .toList();
    return new Kind(
        kind.name(), kind.family(), kind.jobs(), kind.amounts(), chain, kind.tailMinutes());
  }

  private static Activity unlimited(Activity activity) {
    Wait wait = activity.before();
    return new Activity(
        activity.name(),
        activity.fixedMinutes(),
        activity.eachMinutes(),
        activity.workers(),
        activity.pauses(),
        new Wait(wait.clock(), wait.hours(), OptionalInt.empty()),
        activity.holds(),
        activity.notBefore());
  }
}
