package strickle.mix;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Splits a whole number into whole parts by the method of largest remainders. */
final class LargestRemainder {

  private LargestRemainder() {}

  /**
   * Whole parts that add up to {@code total}, each less than one away from its fraction of it. Of
   * equal remainders the earlier part wins.
   *
   * @param total 0 or more, below 2⁵³
   * @param fractions 0 or more each, adding up to 1
   */
  static long[] split(long total, double[] fractions) {
    long[] parts = new long[fractions.length];
    double[] remainders = new double[fractions.length];
    long left = total;
    for (int i = 0; i < parts.length; i++) {
      double exact = fractions[i] * total;
      parts[i] = (long) Math.floor(exact);
      remainders[i] = exact - parts[i];
      left -= parts[i];
    }
    IntStream.range(0, parts.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> -remainders[i]))
        .limit(left)
        .forEach(i -> parts[i]++);
    return parts;
  }
}
