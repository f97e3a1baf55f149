package strickle.shop;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The least minutes from start to start between any two kinds of a shop whose links go back: the
 * longest ways along the links. Where two activities can never run side by side, for want of some
 * resource, and their distance already says which of them comes first, the other waits until it has
 * ended, which lengthens other distances in turn. Without a link that goes back it is empty.
 *
 * <p>Source: M. Bartusch, R. H. Möhring, F. J. Radermacher, Scheduling project networks with
 * resource constraints and time windows, Annals of Operations Research 16 (1988) 201-240; and, for
 * those that cannot run side by side, P. Brucker, S. Knust, A. Schoo, O. Thiele, A branch and bound
 * algorithm for the resource-constrained project scheduling problem, European Journal of
 * Operational Research 107 (1998) 272-288 (values from memory).
 */
final class Distances {

  /** Stands between kinds of which neither has to do with the other: less than any distance. */
  static final int NONE = Integer.MIN_VALUE / 2;

  private static final int MOST = Integer.MAX_VALUE / 2;
  private static final int[] NOBODY = {};

  /** How many kinds are tethered: those that are linked, if any link goes back. */
  final int tethered;

  /** From the start of the first index to that of the second, at least; or {@link #NONE}. */
  final int[][] least;

  /** The first minute at which each kind can start at all. */
  final int[] earliest;

  /** For each kind those that start later, whatever the schedule. */
  final int[][] followers;

  /** Whether the links contradict each other, so that there is no schedule at all. */
  final boolean contradictory;

  private final Tables tables;
  private final boolean[] tethers;

  Distances(Tables tables) {
    this.tables = tables;
    this.tethers = new boolean[tables.kinds];
    boolean any = tables.shop.links().stream().anyMatch(Link::goesBack);
    this.least = new int[any ? tables.kinds : 0][any ? tables.kinds : 0];
    fill();
    this.tethered = (int) kinds().filter(kind -> tethers[kind]).count();
    this.contradictory = contradict() || becomeContradictory();
    this.earliest = kinds().map(this::earliest).toArray();
    this.followers = kinds().mapToObj(this::followers).toArray(int[][]::new);
  }

  /** Whether a kind is one of those that are tethered. */
  boolean tethers(int kind) {
    return tethers[kind];
  }

  private IntStream kinds() {
    return IntStream.range(0, least.length);
  }

  private void fill() {
    for (int kind = 0; kind < least.length; kind++) {
      Arrays.fill(least[kind], NONE);
      least[kind][kind] = 0;
    }
    if (least.length > 0) {
      tables.shop.links().forEach(this::add);
      kinds().forEach(this::spread);
    }
  }

  private void add(Link link) {
    int way = minutes(link.before()) + link.minutes();
    int[] from = least[link.before()];
    from[link.after()] = Math.max(from[link.after()], way);
    tethers[link.before()] = true;
    tethers[link.after()] = true;
  }

  private int minutes(int kind) {
    return tables.minutes(tables.first[kind], 1);
  }

  /** Lengthens every distance that is longer by way of one kind. */
  private void spread(int by) {
    for (int from = 0; from < least.length; from++) {
      for (int to = 0; to < least.length; to++) {
        lengthen(from, least[from][by], 0, least[by][to], to);
      }
    }
  }

  private void lengthen(int from, int first, int between, int last, int to) {
    if (first != NONE && last != NONE) {
      int way = Math.clamp((long) first + between + last, NONE, MOST);
      least[from][to] = Math.max(least[from][to], way);
    }
  }

  private boolean contradict() {
    return kinds().anyMatch(kind -> least[kind][kind] > 0);
  }

  /** Lets those wait that cannot run side by side, until that says nothing new. */
  private boolean becomeContradictory() {
    boolean news = true;
    while (news && !contradict()) {
      news = false;
      for (int first = 0; first < least.length; first++) {
        for (int second = 0; second < least.length; second++) {
          if (first != second && canOnlyFollow(first, second)) {
            letWait(first, second);
            news = true;
          }
        }
      }
    }
    return contradict();
  }

  /** Whether the second would run into the first, or the first into it, and has to come later. */
  private boolean canOnlyFollow(int first, int second) {
    int distance = least[first][second];
    return distance < minutes(first)
        && distance > -minutes(second)
        && minutes(second) > 0
        && cannotRunWith(first, second);
  }

  private boolean cannotRunWith(int one, int other) {
    HoldTables holds = tables.holds;
    int activity = tables.first[one];
    for (int hold = holds.openFirst[activity]; hold < holds.openFirst[activity + 1]; hold++) {
      int resource = holds.resource[hold];
      int capacity = tables.shop.resources().get(resource).capacity();
      if (holds.during[hold] && holds.units[hold] + units(other, resource) > capacity) {
        return units(other, resource) > 0;
      }
    }
    return false;
  }

  /** Units of a resource that a kind holds while its activity lasts. */
  private int units(int kind, int resource) {
    HoldTables holds = tables.holds;
    int activity = tables.first[kind];
    int units = 0;
    for (int hold = holds.openFirst[activity]; hold < holds.openFirst[activity + 1]; hold++) {
      boolean counts = holds.during[hold] && holds.resource[hold] == resource;
      units += counts ? holds.units[hold] : 0;
    }
    return units;
  }

  private void letWait(int first, int second) {
    for (int from = 0; from < least.length; from++) {
      for (int to = 0; to < least.length; to++) {
        lengthen(from, least[from][first], minutes(first), least[second][to], to);
      }
    }
  }

  private int earliest(int kind) {
    return kinds().map(from -> least[from][kind]).max().orElse(0);
  }

  private int[] followers(int kind) {
    return tethers[kind] ? kinds().filter(other -> precedes(kind, other)).toArray() : NOBODY;
  }

  private boolean precedes(int one, int other) {
    int there = least[one][other];
    return there > 0 || (there == 0 && least[other][one] < 0);
  }
}
