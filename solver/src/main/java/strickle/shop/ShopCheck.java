package strickle.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Refuses a shop whose parts do not go together, before any array is built from it. */
final class ShopCheck {

  private final Shop shop;

  private ShopCheck(Shop shop) {
    this.shop = shop;
  }

  static void check(Shop shop) {
    ShopCheck check = new ShopCheck(shop);
    shop.kinds().forEach(check::kind);
    check.sharing();
    shop.links().forEach(check::link);
    if (shop.links().stream().anyMatch(Link::goesBack)) {
      shop.links().forEach(check::tethered);
    } else {
      check.noCircle();
    }
    shop.dues().forEach(check::due);
    shop.fixed().forEach(check::fixed);
    check.underWayFirst();
    check.fixedJobs();
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
    takesTime(kind, activity, index);
    for (Hold hold : activity.holds()) {
      int last = hold.last();
      boolean inOrder = last >= index && last < kind.chain().size();
      boolean apart = index > 0 || last > 0 || isAlone(shop, kind);
      boolean done = hold.until() != Hold.Until.DONE || last == kind.chain().size() - 1;
      must(within(hold.resource(), shop.resources()), activity.name(), "a resource of the shop");
      must(inOrder && done, activity.name(), "a hold that closes with it or with a later one");
      must(apart, activity.name(), "in a shared lot, no hold that closes with its first activity");
    }
  }

  private void takesTime(Kind kind, Activity activity, int index) {
    int shared = index == 0 ? shop.families().get(kind.family()).sharedMinutes() : 0;
    boolean takesTime = shared + activity.fixedMinutes() + activity.eachMinutes() > 0;
    must(
        takesTime || activity.workers().isEmpty(), activity.name(), "a minute or more of a worker");
  }

  /** Whether no two jobs of a kind's family can share a lot. */
  static boolean isAlone(Shop shop, Kind kind) {
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
      must(
          one.jobs() == 1 && isAlone(shop, one),
          one.name(),
          "one job that never shares, to be linked");
    }
  }

  /** What is tethered must take the same minutes whenever it is done. */
  private void tethered(Link link) {
    for (int kind : new int[] {link.before(), link.after()}) {
      Kind one = shop.kinds().get(kind);
      boolean same =
          one.chain().size() == 1
              && one.chain().get(0).workers().isEmpty()
              && shop.families().get(one.family()).sharedMinutes() == 0;
      must(same, one.name(), "one activity, without workers and shared minutes, to be tethered");
    }
  }

  /** Activities done together are done by the same worker, without a pause or all with one. */
  private void sharing() {
    Activity[] first = new Activity[shop.families().size()];
    for (Kind kind : shop.kinds()) {
      if (!isAlone(shop, kind)) {
        Activity mine = kind.chain().get(0);
        Activity others = first[kind.family()] == null ? mine : first[kind.family()];
        boolean alike =
            Set.copyOf(mine.workers()).equals(Set.copyOf(others.workers()))
                && mine.pauses() == others.pauses();
        must(alike, kind.name(), "workers and pauses as in the lots it may share");
        first[kind.family()] = mine;
      }
    }
  }

  /** Takes away kinds that wait for none of those left, until none is left. */
  private void noCircle() {
    List<Link> left = new ArrayList<>(shop.links());
    boolean fewer = true;
    while (fewer) {
      Set<Integer> waiting = left.stream().map(Link::after).collect(Collectors.toSet());
      fewer = left.removeIf(link -> !waiting.contains(link.before()));
    }
    must(left.isEmpty(), "link", "links that do not go round in a circle, unlike " + left);
  }

  private void due(Due due) {
    for (Due.Need need : due.needs()) {
      must(within(need.kind(), shop.kinds()), due.name(), "needs of kinds of the shop");
      int jobs = shop.kinds().get(need.kind()).jobs();
      must(need.count() >= 1 && need.count() <= jobs, due.name(), "needs of 1 to " + jobs);
    }
  }

  private void fixed(FixedLot lot) {
    must(!lot.parts().isEmpty(), "settled lot", "a part or more");
    lot.parts().forEach(part -> must(within(part.kind(), shop.kinds()), "settled lot", "kinds"));
    Kind first = shop.kinds().get(lot.parts().get(0).kind());
    worker(lot, lot.worker(), first.chain().get(0));
    long kinds = lot.parts().stream().map(FixedLot.Part::kind).distinct().count();
    must(kinds == lot.parts().size(), "settled lot", "each kind once");
    for (FixedLot.Part part : lot.parts()) {
      Kind kind = shop.kinds().get(part.kind());
      must(kind.family() == first.family(), "settled lot", "kinds of one family");
      must(part.jobs() >= 1, "settled lot", "1 job or more of " + kind.name());
      boolean waits = shop.links().stream().anyMatch(link -> link.after() == part.kind());
      must(!waits, "settled lot", "kinds that wait for no others, unlike " + kind.name());
      rest(lot, part, kind);
    }
  }

  private void underWayFirst() {
    boolean over = false;
    for (FixedLot lot : shop.fixed()) {
      must(!over || !lot.begun(), "settled lots", "those under way first");
      over |= !lot.begun();
    }
  }

  private void rest(FixedLot lot, FixedLot.Part part, Kind kind) {
    int left = kind.chain().size() - 1 - part.rest().size();
    must(left >= 0, "settled lot", "no more activities than " + kind.name() + " has");
    int bounds = part.notBefore().size();
    must(bounds == 0 || bounds == left, "settled lot", left + " bounds for " + kind.name());
    for (int i = 0; i < part.rest().size() && left >= 0; i++) {
      FixedLot.Place place = part.rest().get(i);
      worker(lot, place.worker(), kind.chain().get(i + 1));
    }
  }

  /** What is under way may be in anybody's hands; what needs nobody never is. */
  private void worker(FixedLot lot, int worker, Activity activity) {
    boolean may = activity.workers().contains(worker);
    boolean nobody = activity.workers().isEmpty() && worker == Slots.NOBODY;
    boolean somebody = lot.begun() && !activity.workers().isEmpty();
    must(
        may || nobody || (somebody && within(worker, shop.workers())),
        "settled lot",
        "a worker who may do " + activity.name());
  }

  /** All settled lots together take no more jobs of a kind than there are. */
  private void fixedJobs() {
    int[] jobs = new int[shop.kinds().size()];
    for (FixedLot lot : shop.fixed()) {
      lot.parts().forEach(part -> jobs[part.kind()] += part.jobs());
    }
    for (int i = 0; i < jobs.length; i++) {
      int most = shop.kinds().get(i).jobs();
      must(
          jobs[i] <= most, "settled lots", "at most " + most + " of " + shop.kinds().get(i).name());
    }
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
