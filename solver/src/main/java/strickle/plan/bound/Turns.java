package strickle.plan.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import strickle.shop.Hold;
import strickle.shop.Kind;
import strickle.shop.Shop;

/**
 * Castings that need the same forms follow each other: of n uses of c units some unit has n / c,
 * rounded up, and no use of it begins before the one before it can be out of its mould.
 */
final class Turns implements Bottleneck {

  private final Shop shop;
  private final Reach reach;
  private final int resource;
  private final long[] uses;
  private final int[] kinds;

  /** The minute the turn of a number can begin at the earliest; more are added as asked for. */
  private final List<Integer> begins = new ArrayList<>(List.of(0));

  private Turns(Shop shop, Reach reach, int resource, long[] uses) {
    this.shop = shop;
    this.reach = reach;
    this.resource = resource;
    this.uses = uses;
    this.kinds = IntStream.range(0, uses.length).filter(kind -> uses[kind] > 0).toArray();
  }

  /**
   * Those of each form, and of each kind in a form by itself. What is not to be made waits for
   * nothing; only for such a kind can a form that is broken have too few units.
   */
  static List<Turns> of(Shop shop, Reach reach) {
    List<Turns> found = new ArrayList<>();
    for (int resource = 0; resource < shop.resources().size(); resource++) {
      int form = resource;
      long[] uses =
          shop.kinds().stream()
              .mapToLong(kind -> kind.jobs() == 0 ? 0 : Sizes.held(kind, form))
              .toArray();
      List<Turns> one = new ArrayList<>();
      for (int kind = 0; kind < uses.length; kind++) {
        if (uses[kind] > 0) {
          long[] own = new long[uses.length];
          // Five units make two turns at once of a mould that needs two.
          own[kind] = 1;
          one.add(new Turns(shop, reach, resource, own));
        }
      }
      if (one.size() > 1) {
        found.add(new Turns(shop, reach, resource, uses));
      }
      found.addAll(one);
    }
    return found;
  }

  /** Those of one unit of a form that whoever needs it takes in turn. */
  static Turns of(Shop shop, Reach reach, int form) {
    long[] uses = shop.kinds().stream().mapToLong(kind -> Sizes.held(kind, form)).toArray();
    return new Turns(shop, reach, form, uses);
  }

  /** How many turns there are of which the last is ready by a minute; at most as many as asked. */
  int within(int by, int most) {
    int turns = 0;
    while (turns < most && kinds.length > 0 && ready(begin(turns)) <= by) {
      turns++;
    }
    return turns;
  }

  /** The minute a turn, counted from 0, can begin. */
  private int begin(int turn) {
    while (begins.size() <= turn) {
      begins.add(freed(begins.get(begins.size() - 1)));
    }
    return begins.get(turn);
  }

  private int ready(int begins) {
    return Arrays.stream(kinds)
        .map(kind -> reach.ready(kind, shop.kinds().get(kind).jobs(), begins))
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  @Override
  public boolean concerns(int[] castings) {
    return Arrays.stream(kinds).anyMatch(kind -> castings[kind] > 0);
  }

  /** The minute the last of so many castings of each kind can be poured. */
  private int lastBegins(int[] castings) {
    long needed = 0;
    for (int kind : kinds) {
      needed += castings[kind] * uses[kind];
    }
    long turns = Math.ceilDiv(needed, units());
    return begin((int) Math.max(0, turns - 1));
  }

  @Override
  public int ready(int[] castings) {
    int begins = lastBegins(castings);
    return Arrays.stream(kinds)
        .filter(kind -> castings[kind] > 0)
        .map(kind -> reach.ready(kind, shop.kinds().get(kind).jobs(), begins))
        .min()
        .orElse(0);
  }

  private long units() {
    int capacity = shop.resources().get(resource).capacity();
    return kinds.length == 1
        ? capacity / Sizes.held(shop.kinds().get(kinds[0]), resource)
        : capacity;
  }

  /** The minute a casting poured then or later can leave what it holds. */
  private int freed(int from) {
    return Arrays.stream(kinds)
        .map(kind -> reach.ended(kind, shop.kinds().get(kind).jobs(), from, lastHeld(kind)))
        .min()
        .orElse(from);
  }

  private int lastHeld(int kind) {
    Kind what = shop.kinds().get(kind);
    return what.chain().get(0).holds().stream()
        .filter(hold -> hold.resource() == resource)
        .mapToInt(Hold::last)
        .min()
        .orElse(0);
  }
}
