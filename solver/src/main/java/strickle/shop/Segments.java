package strickle.shop;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Cuts each kind's chain into claims. Between claims a job may let others go first, so its claims
 * have places of their own in the list. Activities that a most-wait or a held resource ties to the
 * one before are placed together with it; where that tie is loose, they are let go again and have a
 * claim of their own.
 */
final class Segments {

  /** The most claims of a job: a set of them is the bits of one int. The last takes the rest. */
  private static final int MOST = 30;

  /**
   * A shop with more jobs is searched with all ties kept: their claims of their own make its list
   * longer, which was measured to cost more there than it wins.
   */
  private static final int MOST_LOOSE_JOBS = 24;

  private Segments() {}

  /** The claim of every activity, kind by kind. */
  static int[] of(Shop shop) {
    boolean few = !shop.workers().isEmpty() && shop.jobs() <= MOST_LOOSE_JOBS;
    boolean cuts = few && shop.fixed().isEmpty() && shop.links().isEmpty();
    Set<Integer> others = cuts ? openedLater(shop) : Set.of();
    return each(shop, (chain, i) -> tied(chain, i) && !(cuts && loose(chain, i, others)));
  }

  /** Likewise, which activities are placed together. */
  static int[] ties(Shop shop) {
    return each(shop, Segments::tied);
  }

  /** Whether an activity stays with the one before it. */
  @FunctionalInterface
  private interface Stays {
    boolean at(List<Activity> chain, int index);
  }

  private static int[] each(Shop shop, Stays stays) {
    return shop.kinds().stream()
        .flatMapToInt(kind -> IntStream.of(cut(kind.chain(), stays)))
        .toArray();
  }

  private static int[] cut(List<Activity> chain, Stays stays) {
    int[] segment = new int[chain.size()];
    for (int i = 1; i < segment.length; i++) {
      boolean with = stays.at(chain, i) || segment[i - 1] == MOST - 1;
      segment[i] = segment[i - 1] + (with ? 0 : 1);
    }
    return segment;
  }

  private static boolean tied(List<Activity> chain, int index) {
    return chain.get(index).before().atMostMinutes().isPresent()
        || across(chain, index).findAny().isPresent();
  }

  /** Holds that an earlier activity opens and this or a later one closes. */
  private static Stream<Hold> across(List<Activity> chain, int index) {
    return chain.subList(0, index).stream()
        .flatMap(activity -> activity.holds().stream())
        .filter(hold -> hold.last() >= index);
  }

  /** Resources that others than first activities open. */
  private static Set<Integer> openedLater(Shop shop) {
    return shop.kinds().stream()
        .flatMap(kind -> kind.chain().stream().skip(1))
        .flatMap(activity -> activity.holds().stream())
        .map(Hold::resource)
        .collect(Collectors.toSet());
  }

  /**
   * Whether the second activity's tie to the first is loose: what the first holds ends with the
   * second, and only first activities ever ask for it. So what a run holds can stay held until
   * another lot needs it, and nobody else has to wait for it.
   */
  private static boolean loose(List<Activity> chain, int index, Set<Integer> others) {
    List<Hold> holds = chain.getFirst().holds();
    return index == 1
        && !holds.isEmpty()
        && holds.stream().allMatch(Segments::endsWithSecond)
        && holds.stream().noneMatch(hold -> others.contains(hold.resource()));
  }

  private static boolean endsWithSecond(Hold hold) {
    return hold.last() == 1 && hold.until() != Hold.Until.DONE;
  }
}
