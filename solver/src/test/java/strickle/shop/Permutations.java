package strickle.shop;

import java.util.function.Consumer;

/** All orders of a few things, for tests by full enumeration. */
final class Permutations {

  private Permutations() {}

  /** Shows every order of 0 up to {@code count - 1}; the array is the same each time. */
  static void forEach(int count, Consumer<int[]> seen) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      order[i] = i;
    }
    permute(order, 0, seen);
  }

  private static void permute(int[] order, int from, Consumer<int[]> seen) {
    if (from == order.length) {
      seen.accept(order);
    }
    for (int i = from; i < order.length; i++) {
      swap(order, from, i);
      permute(order, from + 1, seen);
      swap(order, from, i);
    }
  }

  private static void swap(int[] order, int one, int other) {
    int kept = order[one];
    order[one] = order[other];
    order[other] = kept;
  }
}
