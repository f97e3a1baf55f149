package strickle.price.fair;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of all choices of a programme: from which to which level each item may be chosen, and how
 * much of each side column there may be.
 */
record Branch(List<Range> items, List<Range> sides) {

  /** More packs or lots than this nobody has. */
  private static final int MOST = 1_000_000;

  /** Copies the lists. */
  Branch {
    items = List.copyOf(items);
    sides = List.copyOf(sides);
  }

  /** From one number to another, both allowed. */
  record Range(int least, int most) {}

  /** All choices. */
  static Branch all(Programme programme) {
    return new Branch(
        programme.items().stream().map(levels -> new Range(0, levels.size() - 1)).toList(),
        programme.sides().stream().map(side -> new Range(0, MOST)).toList());
  }

  /** The choices among these with that range of an item. */
  Branch withItem(int item, int least, int most) {
    return new Branch(with(items, item, new Range(least, most)), sides);
  }

  /** The choices among these with that range of a side column. */
  Branch withSide(int side, int least, int most) {
    return new Branch(items, with(sides, side, new Range(least, most)));
  }

  private static List<Range> with(List<Range> ranges, int at, Range range) {
    List<Range> others = new ArrayList<>(ranges);
    others.set(at, range);
    return others;
  }
}
