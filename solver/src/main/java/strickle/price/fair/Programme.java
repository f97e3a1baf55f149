package strickle.price.fair;

import java.util.ArrayList;
import java.util.List;

/**
 * An integer programme: of each item one level is chosen, so that the worth of all is the greatest
 * that keeps the limits. What a level uses of each limit, and what a unit of a side column adds to
 * it, stands at the limit's place.
 *
 * @param items the levels of each item, at least one
 * @param sides columns beside them that are worth nothing: packs bought, lots mixed
 * @param limits what is limited
 */
record Programme(List<List<Level>> items, List<Side> sides, List<Limit> limits) {

  /** Copies the lists. */
  Programme {
    items = items.stream().map(List::copyOf).toList();
    sides = List.copyOf(sides);
    limits = List.copyOf(limits);
  }

  /**
   * One way to choose an item.
   *
   * @param castings castings in all
   * @param pieces pieces brought
   * @param worth what they are worth
   * @param uses what it takes of each limit
   */
  record Level(int castings, int pieces, double worth, List<Double> uses) {

    Level {
      uses = List.copyOf(uses);
    }
  }

  /**
   * A column beside the items.
   *
   * @param whole whether only whole numbers of it are possible
   * @param uses what a unit of it takes of each limit; below 0 it gives
   */
  record Side(boolean whole, List<Double> uses) {

    Side {
      uses = List.copyOf(uses);
    }
  }

  /**
   * Something that is limited.
   *
   * @param most what may be used of it
   */
  record Limit(double most) {}

  /**
   * What was chosen.
   *
   * @param levels a level of each item
   * @param sides how much of each side column
   * @param worth the sum of the levels' worths
   */
  record Chosen(List<Level> levels, List<Double> sides, double worth) {

    Chosen {
      levels = List.copyOf(levels);
      sides = List.copyOf(sides);
    }
  }

  /**
   * The best choice.
   *
   * @throws IllegalStateException when no choice keeps the limits
   */
  Chosen best() {
    return new Branching(this).best();
  }

  /** The greatest worth if levels could be mixed and columns parted: no choice is worth more. */
  double relaxed() {
    return Relaxed.of(this, Branch.all(this))
        .orElseThrow(() -> new IllegalStateException("no choice keeps the limits"))
        .worth();
  }

  /** Whether anything keeps the limits. */
  boolean isPossible() {
    return new Branching(this).isPossible();
  }

  /** The same programme with more of one limit. */
  Programme withMore(int limit, double more) {
    List<Limit> others = new ArrayList<>(limits);
    others.set(limit, new Limit(limits.get(limit).most() + more));
    return new Programme(items, sides, others);
  }
}
