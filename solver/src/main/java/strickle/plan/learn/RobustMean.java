package strickle.plan.learn;

import java.util.List;
import strickle.cure.StudentT;

/**
 * A mean on which a forgotten clock or a telephone call has little hold: Huber's estimate of
 * location, in which what lies further than 1.5 deviations off counts as much as if it lay there;
 * the deviation is 1.4826 x the median distance from the median. Source: Huber, Robust Estimation
 * of a Location Parameter (1964), value from memory.
 */
final class RobustMean {

  private static final double BEND = 1.5;

  /** Makes the median distance of normal numbers their standard deviation. */
  private static final double NORMAL = 1.4826;

  private static final int ROUNDS = 50;

  private RobustMean() {}

  /**
   * The mean with its band: t x deviation / √n, deviation being at least that of the numbers as
   * they were bent.
   *
   * @param numbers at least two
   */
  static Estimate of(List<Double> numbers) {
    return of(numbers, 0);
  }

  /**
   * The same of numbers that are known no better than to a deviation: however alike they are, the
   * band is no narrower than that makes it.
   *
   * @param numbers at least two
   * @param leastDeviation 0 or more
   */
  static Estimate of(List<Double> numbers, double leastDeviation) {
    double middle = median(numbers);
    double median = median(numbers.stream().map(one -> Math.abs(one - middle)).toList());
    double deviation = Math.max(leastDeviation, NORMAL * median);
    double mean = deviation == 0 ? middle : huber(numbers, middle, BEND * deviation);
    double squares =
        numbers.stream()
            .mapToDouble(one -> bent(one, mean, BEND * deviation) - mean)
            .map(off -> off * off)
            .sum();
    int freedom = numbers.size() - 1;
    double bend = BEND * deviation;
    long unbent = numbers.stream().filter(one -> Math.abs(one - mean) <= bend).count();
    double part = Math.max(1, unbent) / (double) numbers.size();
    double spread = Math.max(leastDeviation, Math.sqrt(squares / freedom) / part);
    double half = StudentT.ninety(freedom) * spread / Math.sqrt(numbers.size());
    return new Estimate(mean, mean - half, mean + half);
  }

  private static double huber(List<Double> numbers, double start, double bend) {
    double mean = start;
    for (int round = 0; round < ROUNDS; round++) {
      double from = mean;
      mean = numbers.stream().mapToDouble(one -> bent(one, from, bend)).average().orElseThrow();
    }
    return mean;
  }

  private static double bent(double number, double mean, double bend) {
    return Math.max(mean - bend, Math.min(mean + bend, number));
  }

  static double median(List<Double> numbers) {
    List<Double> sorted = numbers.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
