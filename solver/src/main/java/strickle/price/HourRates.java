package strickle.price;

import java.math.BigDecimal;
import strickle.book.Studio;

/**
 * What an attended hour costs.
 *
 * @param wagePerHour what its maker is paid
 * @param overheadPerMonth what the studio costs whether or not anything is made
 * @param productiveHoursPerMonth the hours that have to carry it, above 0
 */
record HourRates(
    BigDecimal wagePerHour, BigDecimal overheadPerMonth, BigDecimal productiveHoursPerMonth) {

  /** The rates of a studio. */
  static HourRates of(Studio studio) {
    return new HourRates(
        studio.wagePerHour(), studio.overheadPerMonth(), studio.productiveHoursPerMonth());
  }

  /** Labour = minutes/60 x wage; every attended minute is paid. */
  BigDecimal labour(BigDecimal minutes) {
    return Exact.divide(minutes.multiply(wagePerHour), Exact.MINUTES_PER_HOUR);
  }

  /**
   * Overhead = minutes/60 x overhead per month / productive hours per month. Source: the
   * predetermined overhead rate of job costing (budgeted overhead over budgeted base, OpenStax,
   * Principles of Accounting 2, m68004), with hours as the base.
   */
  BigDecimal overhead(BigDecimal minutes) {
    BigDecimal base = productiveHoursPerMonth.multiply(Exact.MINUTES_PER_HOUR);
    return Exact.divide(minutes.multiply(overheadPerMonth), base);
  }

  /** What a minute costs, wage and overhead together. */
  BigDecimal perMinute() {
    return labour(BigDecimal.ONE).add(overhead(BigDecimal.ONE));
  }
}
