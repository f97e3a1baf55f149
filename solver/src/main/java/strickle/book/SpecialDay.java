package strickle.book;

import java.time.LocalDate;
import java.util.List;

/**
 * A date with other hours than its weekday's.
 *
 * @param date from 1970 to 2199
 * @param hours the opening windows of that date in order; empty for a day off
 */
public record SpecialDay(LocalDate date, List<Window> hours) {

  /**
   * Checks the day and copies its list.
   *
   * @throws Faulty with every fault, paths relative to the day
   */
  public SpecialDay {
    Check check = new Check();
    check.that(
        date != null && Check.isPlausible(date.getYear()),
        ".date",
        Show.thing(date),
        "a date like 2027-04-05, from 1970 to 2199");
    hours = check.windows(".hours", hours);
    check.done();
  }
}
