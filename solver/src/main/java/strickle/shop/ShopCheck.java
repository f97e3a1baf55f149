package strickle.shop;

import java.util.List;

/** Refuses a shop whose parts do not go together, before any array is built from it. */
final class ShopCheck {

  private final Shop shop;

  private ShopCheck(Shop shop) {
    this.shop = shop;
  }

  static void check(Shop shop) {
    ShopCheck check = new ShopCheck(shop);
    shop.kinds().forEach(check::kind);
    shop.links().forEach(check::link);
    shop.dues().forEach(check::due);
    shop.fixed().forEach(check::fixed);
  }

  private void kind(Kind kind) {
    must(within(kind.family(), shop.families()), kind.name(), "a family of the shop");
    int limits = shop.families().get(kind.family()).limits().size();
    must(kind.amounts().size() == limits, kind.name(), "an amount for each limit of its family");
    must(kind.chain().get(0).before().equals(Wait.NONE), kind.name(), "no wait before the first");
    for (int i = 0; i < kind.chain().size(); i++) {
      activity(kind, i);
    }
  }

  private void activity(Kind kind, int index) {
    Activity activity = kind.chain().get(index);
    must(within(activity.before().clock(), shop.clocks()), activity.name(), "a clock of the shop");
    must(
        activity.workers().stream().allMatch(worker -> within(worker, shop.workers())),
        activity.name(),
        "workers of the shop");
    for (Hold hold : activity.holds()) {
      int last = hold.last();
      boolean inOrder = last >= index && last < kind.chain().size();
      boolean apart = index > 0 || last > 0 || isAlone(kind);
      boolean done = hold.until() != Hold.Until.DONE || last == kind.chain().size() - 1;
      must(within(hold.resource(), shop.resources()), activity.name(), "a resource of the shop");
      must(inOrder && done, activity.name(), "a hold that closes with it or with a later one");
      must(apart, activity.name(), "in a shared lot, no hold that closes with its first activity");
    }
  }

  /** Whether no two jobs of a kind's family can share a lot. */
  private boolean isAlone(Kind kind) {
    List<Long> limits = shop.families().get(kind.family()).limits();
    for (int measure = 0; measure < limits.size(); measure++) {
      if (kind.amounts().get(measure) > limits.get(measure)) {
        return true;
      }
    }
    return false;
  }

  private void link(Link link) {
    for (int kind : new int[] {link.before(), link.after()}) {
      must(within(kind, shop.kinds()), "link", "kinds of the shop");
      Kind one = shop.kinds().get(kind);
      must(one.jobs() == 1 && isAlone(one), one.name(), "one job that never shares, to be linked");
    }
  }

  private void due(Due due) {
    for (Due.Need need : due.needs()) {
      must(within(need.kind(), shop.kinds()), due.name(), "needs of kinds of the shop");
      int jobs = shop.kinds().get(need.kind()).jobs();
      must(need.count() >= 1 && need.count() <= jobs, due.name(), "needs of 1 to " + jobs);
    }
  }

  private void fixed(FixedLot lot) {
    must(within(lot.worker(), shop.workers()), "settled lot", "a worker of the shop");
    must(!lot.parts().isEmpty(), "settled lot", "a part or more");
    lot.parts().forEach(part -> must(within(part.kind(), shop.kinds()), "settled lot", "kinds"));
  }

  private static boolean within(int index, List<?> list) {
    return index >= 0 && index < list.size();
  }

  private static void must(boolean holds, String name, String right) {
    if (!holds) {
      throw new IllegalArgumentException(name + ": right would be " + right);
    }
  }
}
