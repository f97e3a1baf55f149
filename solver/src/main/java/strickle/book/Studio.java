package strickle.book;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.joda.money.CurrencyUnit;

/**
 * The studio itself.
 *
 * @param name 1 to 200 characters
 * @param currency of every amount of money in the book
 * @param timeZone of every local time in the book
 * @param wagePerHour what an attended hour is worth, 0 or more
 * @param overheadPerMonth rent, power and the like, 0 or more
 * @param productiveHoursPerMonth attended hours that bear the overhead, above 0
 * @param batchLimitGrams the heaviest lot that can be mixed, in grams, above 0
 * @param climate the room's climate, each entry strictly later than the one before
 */
public record Studio(
    String name,
    CurrencyUnit currency,
    ZoneId timeZone,
    BigDecimal wagePerHour,
    BigDecimal overheadPerMonth,
    BigDecimal productiveHoursPerMonth,
    double batchLimitGrams,
    List<Climate> climate) {

  /**
   * Checks the studio and copies its list.
   *
   * @throws Faulty with every fault, paths relative to the studio
   */
  public Studio {
    Check check = new Check();
    check.name(".name", name);
    check.given(".currency", currency, "a currency like USD");
    check.given(".timeZone", timeZone, "a time zone like America/Chicago");
    check.amount(".wagePerHour", wagePerHour);
    check.amount(".overheadPerMonth", overheadPerMonth);
    check.positive(".productiveHoursPerMonth", productiveHoursPerMonth);
    check.positive(".batchLimitGrams", batchLimitGrams, Check.MOST_ML_OR_GRAMS);
    climate = check.list(".climate", climate);
    checkAscending(check, climate);
    check.done();
  }

  private static void checkAscending(Check check, List<Climate> climate) {
    for (int i = 1; i < climate.size(); i++) {
      LocalDateTime before = climate.get(i - 1).from();
      LocalDateTime from = climate.get(i).from();
      check.that(
          from.isAfter(before),
          ".climate[" + i + "].from",
          from.toString(),
          "a time after that of the entry before, " + before);
    }
  }
}
