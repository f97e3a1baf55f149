package strickle.cure;

/**
 * The curve M + A exp(−k t) that fits weights best for one rate k: then it is a straight line in
 * exp(−k t), and least squares have one answer.
 *
 * @param rate k per day
 * @param finalGrams M, the mass when all free water is gone
 * @param waterGrams A, the free water at the first weighing
 * @param squares the squares of the misses, in g²
 * @param count how many weights
 * @param sum Σ exp(−k t)
 * @param sumOfSquares Σ exp(−2 k t)
 */
record Decay(
    double rate,
    double finalGrams,
    double waterGrams,
    double squares,
    int count,
    double sum,
    double sumOfSquares) {

  /** The best curve of this rate. */
  static Decay of(DryingLog log, double rate) {
    double[] days = log.days();
    double[] grams = log.grams();
    double mean = Calibration.mean(grams);
    double sum = 0;
    double sumOfSquares = 0;
    double products = 0;
    for (int i = 0; i < days.length; i++) {
      double left = Math.exp(-rate * days[i]);
      sum += left;
      sumOfSquares += left * left;
      products += left * (grams[i] - mean);
    }
    int count = days.length;
    double water = products / (sumOfSquares - sum * sum / count);
    double last = mean - water * sum / count;
    double squares = squares(days, grams, rate, last, water);
    return new Decay(rate, last, water, squares, count, sum, sumOfSquares);
  }

  private static double squares(
      double[] days, double[] grams, double rate, double last, double water) {
    double squares = 0;
    for (int i = 0; i < days.length; i++) {
      double miss = grams[i] - last - water * Math.exp(-rate * days[i]);
      squares += miss * miss;
    }
    return squares;
  }

  /** Whether it is a curve that a drying piece can have. */
  boolean isPossible() {
    return finalGrams > 0 && waterGrams > 0;
  }

  /** Free water so many days after the first weighing, in grams. */
  double waterGrams(double days) {
    return waterGrams * Math.exp(-rate * days);
  }

  /**
   * The first day on which less than a limit has been lost in the 24 hours before, in percent of
   * the lesser mass; not before the end of the first day.
   */
  double daysUntil(double limitPercent) {
    return Math.max(1, Math.log(waterGrams / limitGrams(limitPercent)) / rate);
  }

  /** The free water with which the loss of the day before is just the limit. */
  double limitGrams(double limitPercent) {
    double limit = limitPercent / 100;
    double growth = Math.expm1(rate) - limit;
    return growth > 0 ? limit * finalGrams / growth : Double.POSITIVE_INFINITY;
  }

  /**
   * The most that a quantity can stray while the squares grow by {@code room}, for its change with
   * the final mass and with the water: √(room gᵀN⁻¹g).
   */
  double stray(double byFinal, double byWater, double room) {
    double determinant = count * sumOfSquares - sum * sum;
    double form =
        (sumOfSquares * byFinal * byFinal - 2 * sum * byFinal * byWater + count * byWater * byWater)
            / determinant;
    return Math.sqrt(Math.max(0, room * form));
  }
}
