package strickle.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToLongFunction;

/** A set of published problems, and how results on it are told. */
interface Benchmark {

  /** The problems. */
  List<Instance> instances();

  /** What to tell of one result; nothing when only the whole counts. */
  default Optional<String> line(Result result) {
    return Optional.empty();
  }

  /** What to tell of all results together. */
  String summary(List<Result> results);

  /**
   * The mean deviation from some value, in percent of it; problems whose value is 0 are left out,
   * and those without a schedule.
   */
  static String average(List<Result> results, ToLongFunction<Result> value) {
    double mean =
        results.stream()
            .filter(Result::solved)
            .filter(result -> value.applyAsLong(result) > 0)
            .mapToDouble(result -> result.percentOver(value.applyAsLong(result)))
            .average()
            .orElse(0);
    return decimals(mean);
  }

  /** Three decimals, with a point wherever it runs. */
  static String decimals(double number) {
    return String.format(Locale.ROOT, "%.3f", number);
  }

  /** How many are as good as the best known. */
  static long atBest(List<Result> results) {
    return results.stream().filter(Result::atBest).count();
  }
}
