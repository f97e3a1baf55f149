package strickle.cli;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Reads the values of options and gathers what is wrong with them, so that all of it is told at
 * once. A value that was not given, or is wrong, is empty.
 */
final class Given {

  /** Longer than any number that can be meant, and short enough to work with at once. */
  private static final int LONGEST_NUMBER = 30;

  private static final int FIRST_YEAR = 1970;
  private static final int LAST_YEAR = 2199;
  private static final String YEARS = "a year from " + FIRST_YEAR + " to " + LAST_YEAR;

  private static final DateTimeFormatter DATE = strict("uuuu-MM-dd");
  private static final DateTimeFormatter TIME = strict("uuuu-MM-dd'T'HH:mm");
  private static final DateTimeFormatter OFFSET_TIME = strict("uuuu-MM-dd'T'HH:mmXXX");

  private final List<Fault> faults = new ArrayList<>();

  /** A whole number between two, both allowed. */
  Optional<Long> whole(String option, String text, long least, long most) {
    String right = "a whole number from " + least + " to " + most;
    Optional<Long> number = read(option, text, right, Given::whole);
    return number.filter(n -> must(least <= n && n <= most, option, text, right));
  }

  /** A decimal number such as 0.99; how large it may be is for others to say. */
  Optional<BigDecimal> decimal(String option, String text) {
    return read(option, text, "a number such as 30 or 0.99", Given::decimal);
  }

  /** An amount with its unit, read by a method of {@link strickle.book.Amount}. */
  Optional<Double> amount(String option, String text, ToDoubleFunction<String> reading) {
    return text == null ? Optional.empty() : within(option, () -> reading.applyAsDouble(text));
  }

  /** The same, and it must be above zero. */
  Optional<Double> amountAboveZero(
      String option, String text, ToDoubleFunction<String> reading, String right) {
    return amount(option, text, reading).filter(value -> must(value > 0, option, text, right));
  }

  /** A date, which means its midnight, or a date with a time. */
  Optional<LocalDateTime> moment(String option, String text) {
    String right = "a date such as 2027-04-05, or with a time such as 2027-04-05T09:00";
    Optional<LocalDateTime> moment = read(option, text, right, Given::moment);
    return moment.filter(at -> must(isPlausible(at.getYear()), option, text, YEARS));
  }

  /** A date with a time and its offset from UTC, which says which of two hours is meant. */
  Optional<OffsetDateTime> offsetMoment(String option, String text) {
    String right = "a time with its offset such as 2027-04-05T09:00-04:00";
    Optional<OffsetDateTime> moment =
        read(option, text, right, given -> OffsetDateTime.parse(given, OFFSET_TIME));
    return moment.filter(at -> must(isPlausible(at.getYear()), option, text, YEARS));
  }

  /** A date without a time. */
  Optional<LocalDate> date(String option, String text) {
    String right = "a date such as 2027-04-05";
    Optional<LocalDate> date = read(option, text, right, given -> LocalDate.parse(given, DATE));
    return date.filter(day -> must(isPlausible(day.getYear()), option, text, YEARS));
  }

  /** Whatever a reading finds, its faults told under an option. */
  <T> Optional<T> within(String option, Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (Faulty faulty) {
      faulty.faults().forEach(fault -> faults.add(fault.under(option)));
      return Optional.empty();
    }
  }

  /** The same, for readings whose paths name an option themselves: ".outer" is "--outer". */
  <T> Optional<T> asOptions(Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (Faulty faulty) {
      for (Fault fault : faulty.faults()) {
        faults.add(new Fault(option(fault.path()), fault.found(), fault.right()));
      }
      return Optional.empty();
    }
  }

  /** ".stepGrams" is the option "--step-grams"; what stands behind a space is a name as it is. */
  private static String option(String path) {
    int space = path.indexOf(' ');
    String field = space < 0 ? path.substring(1) : path.substring(1, space);
    String words = field.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    return "--" + words + (space < 0 ? "" : path.substring(space));
  }

  /** Notes a fault. */
  void fault(Fault fault) {
    faults.add(fault);
  }

  /** Notes a fault unless the rule holds; says whether it does. */
  boolean must(boolean holds, String option, String text, String right) {
    if (!holds) {
      faults.add(new Fault(option, '"' + text + '"', right));
    }
    return holds;
  }

  /** Whether anything is wrong so far. */
  boolean isFaulty() {
    return !faults.isEmpty();
  }

  /**
   * Ends the reading.
   *
   * @throws Faulty when anything is wrong
   */
  void done() {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  private <T> Optional<T> read(String option, String text, String right, Reading<T> reading) {
    if (text == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(reading.of(text));
    } catch (NumberFormatException | DateTimeException unreadable) {
      must(false, option, text, right);
      return Optional.empty();
    }
  }

  private static Long whole(String text) {
    return Long.valueOf(text);
  }

  private static BigDecimal decimal(String text) {
    if (text.length() > LONGEST_NUMBER || !text.matches("-?[0-9]+([.][0-9]+)?")) {
      throw new NumberFormatException(text);
    }
    return new BigDecimal(text);
  }

  private static LocalDateTime moment(String text) {
    return text.contains("T")
        ? LocalDateTime.parse(text, TIME)
        : LocalDate.parse(text, DATE).atStartOfDay();
  }

  private static boolean isPlausible(int year) {
    return FIRST_YEAR <= year && year <= LAST_YEAR;
  }

  private static DateTimeFormatter strict(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ROOT)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  @FunctionalInterface
  private interface Reading<T> {
    T of(String text);
  }
}
