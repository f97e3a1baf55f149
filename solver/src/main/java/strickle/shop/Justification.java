package strickle.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Forward-backward justification: everything is pushed as late as it can be, the last to end first,
 * and then as early again, the first to start first. It shortens a schedule or leaves its length.
 * Only a shop without workers' hours, most-waits and shared lots, and with one due date, can be run
 * backwards.
 *
 * <p>Source: V. Valls, F. Ballestín, S. Quintanilla, Justification and RCPSP: a technique that
 * pays, European Journal of Operational Research 165 (2005) 375-386.
 */
final class Justification {

  /** Where a claim's number goes in a sorting key; a shop has fewer claims than that. */
  private static final int CLAIM_BITS = 20;

  private final Tables tables;
  private final Decoder backward;
  private final Tables backwardTables;
  private final long[] keys;
  private final int[] order;

  private Justification(Tables tables, Tables backwardTables, int claims) {
    this.tables = tables;
    this.backwardTables = backwardTables;
    this.backward = new Decoder(backwardTables);
    this.keys = new long[claims];
    this.order = new int[claims];
  }

  /** Justification for a shop, if it can be run backwards. */
  static Optional<Justification> of(Tables tables, Claims claims) {
    boolean can = reversible(tables.shop) && claims.count() < 1 << CLAIM_BITS;
    return can
        ? Optional.of(new Justification(tables, new Tables(reversed(tables.shop)), claims.count()))
        : Optional.empty();
  }

  /** How many schedules have been generated backwards. */
  long decoded() {
    return backward.decoded();
  }

  /**
   * Runs a schedule backwards.
   *
   * @return whether that had room: claims that are tied together may stretch
   */
  boolean backAndForth(Timetable forward) {
    sortByEnd(tables, forward);
    if (!backward.decode(order)) {
      return false;
    }
    sortByEnd(backwardTables, backward.timetable());
    return true;
  }

  /** The order in which the claims start after {@link #backAndForth}; the same array every time. */
  int[] order() {
    return order;
  }

  /** The claims of the other direction, the last to end first; each is its counterpart there. */
  private void sortByEnd(Tables from, Timetable timetable) {
    int claim = 0;
    for (int kind = 0; kind < from.kinds; kind++) {
      int slot = timetable.runSlot[timetable.firstRunOfKind[kind]];
      int claims = from.segments[kind];
      int lastOfClaim = from.size[kind] - 1;
      for (int part = 0; part < claims; part++) {
        // Part 0 of the other direction is the last part of this one.
        keys[claim] = ((long) -timetable.end[slot + lastOfClaim] << CLAIM_BITS) + claim;
        lastOfClaim = firstOfPart(from, kind, claims - 1 - part) - 1;
        claim++;
      }
    }
    Arrays.sort(keys);
    for (int i = 0; i < order.length; i++) {
      order[i] = (int) (keys[i] & (1 << CLAIM_BITS) - 1);
    }
  }

  private static int firstOfPart(Tables tables, int kind, int part) {
    return tables.firstOfSegment(kind, part);
  }

  private static boolean reversible(Shop shop) {
    return shop.dues().size() == 1
        && shop.fixed().isEmpty()
        && shop.kinds().stream().allMatch(kind -> reversible(shop, kind));
  }

  private static boolean reversible(Shop shop, Kind kind) {
    return kind.jobs() == 1
        && kind.tailMinutes() == 0
        && ShopCheck.isAlone(shop, kind)
        && shop.families().get(kind.family()).sharedMinutes() == 0
        && kind.chain().stream().allMatch(Justification::reversible);
  }

  private static boolean reversible(Activity activity) {
    return activity.workers().isEmpty()
        && activity.notBefore() == 0
        && activity.before().equals(Wait.NONE)
        && activity.holds().stream().allMatch(hold -> hold.until() == Hold.Until.END);
  }

  private static Shop reversed(Shop shop) {
    List<Link> links =
        shop.links().stream()
            .map(link -> new Link(link.after(), link.before(), link.minutes()))
            .toList();
    return new Shop(
        shop.horizonMinutes(),
        shop.lateUnitMinutes(),
        shop.workers(),
        shop.clocks(),
        shop.resources(),
        shop.families(),
        shop.kinds().stream().map(Justification::reversed).toList(),
        links,
        List.of(),
        List.of());
  }

  private static Kind reversed(Kind kind) {
    int size = kind.chain().size();
    List<Activity> chain =
        IntStream.range(0, size).mapToObj(i -> reversed(kind.chain(), i)).toList();
    List<Activity> backwards = new ArrayList<>(chain);
    Collections.reverse(backwards);
    return new Kind(kind.name(), kind.family(), 1, kind.amounts(), backwards, 0);
  }

  /** An activity opens, backwards, the holds that it closes forwards. */
  private static Activity reversed(List<Activity> chain, int index) {
    int last = chain.size() - 1;
    List<Hold> holds = new ArrayList<>();
    for (int opener = 0; opener <= index; opener++) {
      for (Hold hold : chain.get(opener).holds()) {
        if (hold.last() == index) {
          holds.add(new Hold(hold.resource(), hold.unitsEach(), last - opener, Hold.Until.END));
        }
      }
    }
    Activity one = chain.get(index);
    return new Activity(
        one.name(),
        one.fixedMinutes(),
        one.eachMinutes(),
        one.workers(),
        one.pauses(),
        one.before(),
        holds);
  }
}
