package strickle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import strickle.shop.Activity;
import strickle.shop.Due;
import strickle.shop.Kind;
import strickle.shop.Shop;

/**
 * What no schedule of a shop can beat. Settled lots are not looked at, so it holds with them as
 * well as without. For one thread at a time.
 */
public final class ShopBound {

  private final Shop shop;
  private final Reach reach;
  private final List<Turns> turns;
  private final List<Hands> hands;
  private final Soonest soonest;

  /** The bounds of a shop in which every activity is done by somebody. */
  public ShopBound(Shop shop) {
    this.shop = shop;
    Sizes sizes = new Sizes(shop);
    this.reach = new Reach(shop, sizes);
    this.turns = Turns.of(shop, reach);
    this.hands = Hands.of(shop, sizes, reach);
    this.soonest = new Soonest(shop, reach, turns, hands);
  }

  /**
   * The minute before which so many jobs cannot all be done, even if they were alone.
   *
   * @return 0 when nothing is needed
   */
  public int ready(List<Due.Need> needs) {
    return soonest.ready(castings(needs));
  }

  /**
   * How many castings one unit of a resource can see through, one after the other, so that the last
   * is ready by a minute: no shop with more of anything else has more.
   *
   * @param most what is enough to know
   */
  public int turns(int resource, int by, int most) {
    return Turns.of(shop, reach, resource).within(by, most);
  }

  /** The most castings of a kind that one run can have. */
  public int run(int kind) {
    return new Sizes(shop).run(kind);
  }

  /** The least that late units can cost, each counted as often as its due date weighs. */
  public long late() {
    List<Asked> orders = new ArrayList<>();
    for (Due due : shop.dues()) {
      int[] castings = castings(due.needs());
      orders.add(new Asked(due, castings, soonest.ready(castings), shop.lateUnitMinutes()));
    }
    orders.sort(Comparator.comparingInt(order -> order.due().at()));
    int kinds = shop.kinds().size();
    List<Sequence> sequences =
        Stream.concat(turns.stream(), hands.stream().map(one -> one.bottleneck()))
            .map(one -> new Sequence(one, kinds))
            .toList();
    return new Lateness(orders).least(sequences);
  }

  /** The least attended minutes of everything there is to do. */
  public long attended() {
    return attended(shop);
  }

  /** The same, for those who ask nothing else: it takes next to no time. */
  public static long attended(Shop shop) {
    Sizes sizes = new Sizes(shop);
    int[] all = shop.kinds().stream().mapToInt(Kind::jobs).toArray();
    long minutes = 0;
    for (int kind = 0; kind < all.length; kind++) {
      for (Activity activity : shop.kinds().get(kind).chain()) {
        minutes += (long) all[kind] * activity.eachMinutes();
        minutes += sizes.runs(kind, all[kind]) * activity.fixedMinutes();
      }
    }
    for (int family = 0; family < shop.families().size(); family++) {
      minutes += sizes.lots(family, all) * shop.families().get(family).sharedMinutes();
    }
    return minutes;
  }

  private int[] castings(List<Due.Need> needs) {
    int[] castings = new int[shop.kinds().size()];
    needs.forEach(need -> castings[need.kind()] = Math.max(castings[need.kind()], need.count()));
    return castings;
  }
}
