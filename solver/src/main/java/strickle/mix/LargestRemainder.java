package strickle.mix;

import java.util.Comparator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Splits a whole number into whole parts, each less than one away from what it should be. */
final class LargestRemainder {

  /** Above a whole number by less than this is none more. */
  private static final double ROUND_OFF = 1e-9;

  private LargestRemainder() {}

  /**
   * Whole parts for exact ones, each less than one away from it, that add up to the least whole
   * number not below the sum of the exact ones. What is left by rounding down goes where the sum of
   * the relative errors becomes least, so to large parts rather than to a pinch of pigment.
   *
   * @param exact 0 or more each, adding up to less than 2⁵³
   */
  static long[] atLeast(double[] exact) {
    double sum = 0;
    for (double part : exact) {
      sum += part;
    }
    long[] parts = new long[exact.length];
    long left = (long) Math.ceil(sum - ROUND_OFF);
    for (int i = 0; i < parts.length; i++) {
      parts[i] = (long) Math.floor(exact[i] + ROUND_OFF);
      left -= parts[i];
    }
    IntStream.range(0, parts.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> -gain(exact[i], parts[i])))
        .limit(Math.max(0, left))
        .forEach(i -> parts[i]++);
    return parts;
  }

  /** By how much the relative error is smaller with one more; a part of nothing gets none. */
  private static double gain(double exact, long part) {
    return exact > 0
        ? (Math.abs(exact - part) - Math.abs(part + 1 - exact)) / exact
        : Double.NEGATIVE_INFINITY;
  }

  /**
   * Whole parts that add up to {@code total}, each less than one away from its fraction of it. Of
   * equal remainders the earlier part wins.
   *
   * @param total 0 or more, below 2⁵³
   * @param fractions 0 or more each, adding up to 1
   */
  static long[] split(long total, double[] fractions) {
    return split(total, i -> fractions[i] * total, fractions.length);
  }

  private static long[] split(long total, IntToDoubleFunction exact, int count) {
    long[] parts = new long[count];
    double[] remainders = new double[count];
    long left = total;
    for (int i = 0; i < count; i++) {
      parts[i] = (long) Math.floor(exact.applyAsDouble(i));
      remainders[i] = exact.applyAsDouble(i) - parts[i];
      left -= parts[i];
    }
    IntStream.range(0, parts.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> -remainders[i]))
        .limit(Math.max(0, left))
        .forEach(i -> parts[i]++);
    return parts;
  }
}
