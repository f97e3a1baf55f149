package strickle.shop;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Cuts each kind's chain into claims. Activities that a most-wait or a held resource ties together
 * stay in one claim and are placed together; between them a job may let others go first, so its
 * claims have places of their own in the list.
 */
final class Segments {

  /** The most claims of a job: a set of them is the bits of one int. The last takes the rest. */
  private static final int MOST = 30;

  private Segments() {}

  /** The claim of every activity, kind by kind. */
  static int[] of(Shop shop) {
    return shop.kinds().stream().flatMapToInt(kind -> IntStream.of(of(kind.chain()))).toArray();
  }

  private static int[] of(List<Activity> chain) {
    int[] segment = new int[chain.size()];
    for (int i = 1; i < segment.length; i++) {
      boolean stays = tied(chain, i) || segment[i - 1] == MOST - 1;
      segment[i] = segment[i - 1] + (stays ? 0 : 1);
    }
    return segment;
  }

  private static boolean tied(List<Activity> chain, int index) {
    if (chain.get(index).before().atMostMinutes().isPresent()) {
      return true;
    }
    return chain.subList(0, index).stream()
        .flatMap(activity -> activity.holds().stream())
        .anyMatch(hold -> hold.last() >= index);
  }
}
