package strickle.cure;

import java.util.List;
import java.util.Optional;

/**
 * The hours at 20 °C after which the studio's own castings were found ready. Times differ by a
 * factor rather than by a number of hours, so the middle is the geometric mean and the spread a
 * factor too.
 *
 * @param castings how many records there are
 * @param referenceHours the middle, in hours at 20 °C
 * @param lowHours 90 of 100 further castings are between this
 * @param highHours and this, as far as so few records can tell
 * @param spreadPercent the standard deviation of one casting, in percent
 * @param activation what the records say about the activation themselves, when they can
 */
public record Calibration(
    int castings,
    double referenceHours,
    double lowHours,
    double highHours,
    double spreadPercent,
    Optional<ActivationFit> activation) {

  /** Castings that differ by more have not been through the same; common practice, no source. */
  private static final double MUCH_PERCENT = 50;

  /** Two records would leave the spread open by a factor of hundreds. */
  public static final int FEWEST = 3;

  /** Whether the castings differ by more than one mix in one mould does. */
  public boolean isContradictory() {
    return spreadPercent > MUCH_PERCENT;
  }

  /**
   * Fits the reference hours.
   *
   * @throws strickle.book.Faulty with an empty path when there are too few records, or one that no
   *     age can be told of
   */
  public static Calibration of(AgeRule rule, List<Found> records) {
    Checks checks = new Checks();
    checks.that(
        records.size() >= FEWEST,
        "",
        records.size() == 1 ? "1 casting" : records.size() + " castings",
        "at least " + FEWEST + " castings, or nothing can be said of the spread");
    for (Found record : records) {
      checks.that(
          rule.hours(record.stretches()) > 0,
          "",
          "\"" + record.casting() + "\", which was never above the datum",
          "a datum below the temperatures at which castings were found ready");
    }
    checks.done();
    return fitted(rule, records);
  }

  private static Calibration fitted(AgeRule rule, List<Found> records) {
    double[] logs =
        records.stream().mapToDouble(one -> Math.log(rule.hours(one.stretches()))).toArray();
    int count = logs.length;
    double mean = mean(logs);
    double squares = 0;
    for (double log : logs) {
      squares += (log - mean) * (log - mean);
    }
    double deviation = Math.sqrt(squares / (count - 1));
    double half = StudentT.ninety(count - 1) * deviation * Math.sqrt(1 + 1.0 / count);
    return new Calibration(
        count,
        Math.exp(mean),
        Math.exp(mean - half),
        Math.exp(mean + half),
        100 * (Math.exp(deviation) - 1),
        ActivationFit.of(records));
  }

  /** The arithmetic mean. */
  static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
