package strickle.plan.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import strickle.shop.Calendar;
import strickle.shop.Family;
import strickle.shop.Hold;
import strickle.shop.Kind;
import strickle.shop.Shop;

/** How much goes into a run and a lot at most, and so how many there have to be at least. */
final class Sizes {

  /** So much of each kind is taken of something of which a lot can take no more than the limit. */
  private static final class Measure {

    private final long limit;
    private final long[] each;

    Measure(long limit, long[] each) {
      this.limit = limit;
      this.each = each;
    }

    boolean isOfAny() {
      return Arrays.stream(each).anyMatch(amount -> amount > 0);
    }
  }

  private final Shop shop;
  private final List<List<Measure>> measures = new ArrayList<>();
  private final int[] runs;

  Sizes(Shop shop) {
    this.shop = shop;
    for (int family = 0; family < shop.families().size(); family++) {
      measures.add(measures(family));
    }
    this.runs = IntStream.range(0, shop.kinds().size()).map(this::largest).toArray();
  }

  /** The most castings of a kind that one run can have, 1 or more. */
  int run(int kind) {
    return runs[kind];
  }

  /** The fewest runs that so many castings of a kind make. */
  long runs(int kind, int castings) {
    return Math.ceilDiv(castings, run(kind));
  }

  /** The fewest lots of a family that so many castings of each kind can be poured from. */
  long lots(int family, int[] castings) {
    long least = 0;
    if (isOf(family, castings)) {
      for (Measure measure : measures.get(family)) {
        least = Math.max(least, Bins.least(measure.each, castings, measure.limit));
      }
    }
    return least;
  }

  private boolean isOf(int family, int[] castings) {
    for (int kind = 0; kind < castings.length; kind++) {
      if (castings[kind] > 0 && shop.kinds().get(kind).family() == family) {
        return true;
      }
    }
    return false;
  }

  /** What limits a lot: the family's own limits, the longest window, and what is held while set. */
  private List<Measure> measures(int family) {
    Family what = shop.families().get(family);
    List<Measure> found = new ArrayList<>();
    for (int i = 0; i < what.limits().size(); i++) {
      int measure = i;
      found.add(measure(family, what.limits().get(i), kind -> kind.amounts().get(measure)));
    }
    long minutes = longestWindow() - (long) what.sharedMinutes();
    found.add(measure(family, minutes, kind -> kind.chain().get(0).eachMinutes()));
    for (int i = 0; i < shop.resources().size(); i++) {
      int resource = i;
      int capacity = shop.resources().get(i).capacity();
      found.add(measure(family, capacity, kind -> held(kind, resource)));
    }
    return found.stream().filter(Measure::isOfAny).toList();
  }

  @FunctionalInterface
  private interface Each {
    long of(Kind kind);
  }

  private Measure measure(int family, long limit, Each each) {
    long[] amounts =
        shop.kinds().stream()
            .mapToLong(kind -> kind.family() == family ? each.of(kind) : 0)
            .toArray();
    return new Measure(limit, amounts);
  }

  /** Units of a resource that a casting takes from its pour on. */
  static long held(Kind kind, int resource) {
    return kind.chain().get(0).holds().stream()
        .filter(hold -> hold.resource() == resource)
        .mapToLong(Hold::unitsEach)
        .sum();
  }

  /** A pour can be as long as the longest window anybody has, on whatever day. */
  private int longestWindow() {
    int longest = 0;
    for (Calendar hours : shop.workers()) {
      for (int i = 0; i < hours.windows(); i++) {
        longest = Math.max(longest, hours.closes(i) - hours.opens(i));
      }
    }
    return longest;
  }

  private int largest(int kind) {
    Kind what = shop.kinds().get(kind);
    long most = Math.max(1, what.jobs());
    for (Measure measure : measures.get(what.family())) {
      long each = measure.each[kind];
      most = each > 0 ? Math.min(most, measure.limit / each) : most;
    }
    for (Hold hold : what.chain().stream().flatMap(one -> one.holds().stream()).toList()) {
      most = Math.min(most, shop.resources().get(hold.resource()).capacity() / hold.unitsEach());
    }
    return (int) Math.max(1, most);
  }
}
