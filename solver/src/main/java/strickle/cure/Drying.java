package strickle.cure;

import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * How a piece dries, read from its weights: free water falls by the same part each day (Lewis, (M −
 * M_e)/(M_0 − M_e) = exp(−k t)). Concrete slows more than that at the end, so the curve is of use
 * not far beyond the last weighing.
 *
 * @param limitPercent the daily loss that is waited for, in percent of the lesser mass
 * @param ratePerDay k, per day
 * @param finalGrams the mass when all free water is gone, as far as the curve tells
 * @param waterNowGrams free water at the last weighing
 * @param limitDays the first whole day, counted from the first weighing, with less than the limit
 *     lost in the 24 hours before
 * @param waterAtLimitGrams free water that is still in the piece then
 * @param missGrams standard deviation of the weights from the curve
 */
public record Drying(
    double limitPercent,
    Between ratePerDay,
    Between finalGrams,
    Between waterNowGrams,
    Between limitDays,
    Between waterAtLimitGrams,
    double missGrams) {

  /** Weights that miss the curve by more than this part of the loss contradict each other. */
  private static final double MOST_MISS = 0.1;

  /** So that a day reached up to rounding counts as reached. */
  private static final double TOLERANCE_DAYS = 1e-6;

  private static final double LEAST_PERCENT = 0.001;
  private static final double MOST_PERCENT = 10;

  /**
   * Fits the curve.
   *
   * @param limitPercent 0.001 to 10 percent of the lesser mass in a day
   * @throws Faulty when the limit is out of range (path {@code .limitPercent}), or nothing can be
   *     predicted (empty path): the loss does not slow yet, was over by the second weighing, or the
   *     weights do not follow one curve
   */
  public static Drying of(DryingLog log, double limitPercent) {
    Checks checks = new Checks();
    checks.between(".limitPercent", limitPercent, LEAST_PERCENT, MOST_PERCENT);
    checks.done();
    DecayFit fit = DecayFit.of(log);
    mustBeOneCurve(log, fit);
    if (fit.slowestIsPossible()) {
      throw refusal(
          "a loss that has not slowed yet, so that its end cannot be seen",
          "further weighings, until the piece loses clearly less in a day than at first");
    }
    List<Decay> region = fit.region();
    if (!fit.best().isPossible() || region.stream().anyMatch(one -> !one.isPossible())) {
      throw refusal(
          "weights from which no final mass can be told", "further weighings, some days apart");
    }
    return read(log, fit, region, limitPercent);
  }

  private static void mustBeOneCurve(DryingLog log, DecayFit fit) {
    double miss = fit.missGrams();
    if (miss > MOST_MISS * log.lostGrams() && miss > log.scaleStepGrams()) {
      throw refusal(
          "weights that contradict each other: they miss the best curve by "
              + Checks.shown(Math.rint(miss * 100) / 100)
              + " g, of "
              + Checks.shown(Math.rint(log.lostGrams() * 100) / 100)
              + " g lost in all",
          "one piece, one scale, and a room and a place that stay as they are");
    }
    if (fit.fastestIsBest()) {
      throw refusal(
          "a loss that was over by the second weighing",
          "weighings closer together while the piece still loses");
    }
  }

  private static Drying read(DryingLog log, DecayFit fit, List<Decay> region, double limit) {
    Decay best = fit.best();
    double last = log.lastDays() - log.firstDays();
    double days = wholeDays(best.daysUntil(limit));
    Between rate = exactly(best.rate());
    Between mass = exactly(best.finalGrams());
    Between now = exactly(best.waterGrams(last));
    Between until = exactly(days);
    Between then = exactly(best.waterGrams(days));
    for (Decay one : region) {
      double room = fit.room(one);
      double left = Math.exp(-one.rate() * last);
      rate = rate.and(one.rate(), 0);
      mass = mass.and(one.finalGrams(), one.stray(1, 0, room));
      now = now.and(one.waterGrams(last), one.stray(0, left, room));
      double byMass = -1 / (one.rate() * one.finalGrams());
      double byWater = 1 / (one.rate() * one.waterGrams());
      until = until.and(one.daysUntil(limit), one.stray(byMass, byWater, room));
      double fixed = Math.exp(-one.rate() * days);
      then = then.and(one.waterGrams(days), one.stray(0, fixed, room));
    }
    return new Drying(
        limit,
        rate,
        mass,
        notBelow(0, now),
        whole(notBelow(1, until)),
        notBelow(0, then),
        fit.missGrams());
  }

  private static Between exactly(double figure) {
    return new Between(figure, figure, figure);
  }

  private static Between notBelow(double least, Between band) {
    return new Between(
        Math.max(least, band.low()), Math.max(least, band.likely()), Math.max(least, band.high()));
  }

  private static Between whole(Between band) {
    return new Between(wholeDays(band.low()), wholeDays(band.likely()), wholeDays(band.high()));
  }

  private static double wholeDays(double days) {
    return Math.ceil(days - TOLERANCE_DAYS);
  }

  private static Faulty refusal(String found, String right) {
    return new Faulty(List.of(new Fault("", found, right)));
  }
}
