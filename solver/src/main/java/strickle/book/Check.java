package strickle.book;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Collects the faults of one record while its constructor looks at each part, and throws them all
 * together at the end. Paths are relative to the record; a part that is null counts as not given.
 */
final class Check {

  /** Most minutes anything attended may take: some seventy days. */
  static final int MOST_MINUTES = 100_000;

  /** Most hours of any wait: a year. */
  static final double MOST_HOURS = 8760;

  /** Most of anything counted. */
  static final int MOST_COUNT = 100_000;

  /** Most castings in a run, cavities in a mould, or units of a form. */
  static final int MOST_AT_ONCE = 1000;

  /** Most millilitres or grams of one thing: ten cubic metres. */
  static final double MOST_ML_OR_GRAMS = 10_000_000;

  private static final BigDecimal MOST_AMOUNT = BigDecimal.valueOf(1_000_000_000);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final int MOST_DECIMALS = 12;
  private static final int LONGEST_ID = 64;
  private static final int LONGEST_NAME = 200;
  private static final int FIRST_YEAR = 1970;
  private static final int LAST_YEAR = 2199;

  private final List<Fault> faults = new ArrayList<>();

  /** Notes a fault. */
  void fault(String path, String found, String right) {
    faults.add(new Fault(path, found, right));
  }

  /** Notes a fault unless the rule holds. */
  void that(boolean holds, String path, String found, String right) {
    if (!holds) {
      fault(path, found, right);
    }
  }

  /** How many faults were noted so far. */
  int count() {
    return faults.size();
  }

  /**
   * Ends the check.
   *
   * @throws Faulty when any fault was noted
   */
  void done() {
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** Something must be given; says whether it was. */
  boolean given(String path, Object value, String right) {
    that(value != null, path, Show.NOTHING, right);
    return value != null;
  }

  /** An id: 1 to 64 characters that can stand in a path and on a label. */
  void id(String path, String id) {
    boolean good =
        id != null
            && !id.isEmpty()
            && isPrintable(id, LONGEST_ID)
            && id.indexOf('/') < 0
            && !isSpace(id.codePointAt(0))
            && !isSpace(id.codePointBefore(id.length()));
    that(
        good,
        path,
        Show.text(id),
        "an id of 1 to 64 characters without '/', control characters or spaces at the ends");
  }

  private static boolean isSpace(int codePoint) {
    return Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint);
  }

  /** A name: 1 to 200 characters, not all of them spaces. */
  void name(String path, String name) {
    that(
        name != null && !name.isBlank() && isPrintable(name, LONGEST_NAME),
        path,
        Show.text(name),
        "a name of 1 to 200 characters without control characters");
  }

  /** A remark: at most 200 characters, may be empty. */
  void remark(String path, String remark) {
    that(
        remark != null && isPrintable(remark, LONGEST_NAME),
        path,
        Show.text(remark),
        "a text of at most 200 characters without control characters");
  }

  private static boolean isPrintable(String text, int longest) {
    return text.codePointCount(0, text.length()) <= longest
        && text.codePoints().noneMatch(Show::isUnprintable);
  }

  /** A whole number between two, both allowed. */
  void whole(String path, int value, int lowest, int highest) {
    that(
        lowest <= value && value <= highest,
        path,
        Integer.toString(value),
        "a whole number from " + lowest + " to " + highest);
  }

  /** Minutes of something attended, from the fewest allowed. */
  void minutes(String path, int value, int fewest) {
    whole(path, value, fewest, MOST_MINUTES);
  }

  /** A number between two, both allowed. */
  void number(String path, double value, double lowest, double highest) {
    that(
        lowest <= value && value <= highest,
        path,
        Show.number(value),
        "a number from " + Show.number(lowest) + " to " + Show.number(highest));
  }

  /** A number between two, if given. */
  void number(String path, OptionalDouble value, double lowest, double highest) {
    if (given(path, value, "a number or none")) {
      value.ifPresent(v -> number(path, v, lowest, highest));
    }
  }

  /** A number above zero. */
  void positive(String path, double value, double highest) {
    that(
        0 < value && value <= highest,
        path,
        Show.number(value),
        "a number above 0, at most " + Show.number(highest));
  }

  /** Hours of a wait. */
  void hours(String path, double value) {
    number(path, value, 0, MOST_HOURS);
  }

  /** The most hours a wait may take, if given: no fewer than it needs. */
  void atMostHours(String path, OptionalDouble value, double fewest) {
    if (given(path, value, "hours or none")) {
      // A faulty "fewest" has its own fault; it must not make a second one here.
      double lowest = 0 <= fewest && fewest <= MOST_HOURS ? fewest : 0;
      value.ifPresent(v -> number(path, v, lowest, MOST_HOURS));
    }
  }

  /** An amount of money or of a material: zero or more, with at most 12 decimals. */
  void amount(String path, BigDecimal value) {
    amount(path, value, MOST_AMOUNT, MOST_DECIMALS);
  }

  /** An amount, if given. */
  void amount(String path, Optional<BigDecimal> value) {
    if (given(path, value, "an amount or none")) {
      value.ifPresent(v -> amount(path, v));
    }
  }

  /** An amount with bounds of its own. */
  void amount(String path, BigDecimal value, BigDecimal highest, int decimals) {
    boolean inside = value != null && value.signum() >= 0 && value.compareTo(highest) <= 0;
    decimal(path, value, inside, "a number from 0 to " + Show.number(highest), decimals);
  }

  /** An amount above zero. */
  void positive(String path, BigDecimal value) {
    boolean inside = value != null && value.signum() > 0 && value.compareTo(MOST_AMOUNT) <= 0;
    String right = "a number above 0, at most " + Show.number(MOST_AMOUNT);
    decimal(path, value, inside, right, MOST_DECIMALS);
  }

  /** A part that is taken off: a percentage from 0 to below 100. */
  void percentOff(String path, BigDecimal value) {
    boolean inside = value != null && value.signum() >= 0 && value.compareTo(HUNDRED) < 0;
    decimal(path, value, inside, "a percentage from 0 to below 100", MOST_DECIMALS);
  }

  // Sums of numbers with absurdly many decimals would fill the memory.
  private void decimal(String path, BigDecimal value, boolean inside, String right, int decimals) {
    that(
        inside && value.stripTrailingZeros().scale() <= decimals,
        path,
        Show.number(value),
        right + ", with at most " + decimals + " decimals");
  }

  /** A local time in whole minutes of a year that can be meant. */
  void moment(String path, LocalDateTime moment) {
    boolean good =
        moment != null
            && moment.getSecond() == 0
            && moment.getNano() == 0
            && isPlausible(moment.getYear());
    that(
        good,
        path,
        Show.thing(moment),
        "a local time in whole minutes like 2027-04-05T09:00, from 1970 to 2199");
  }

  /** Whether a year can be meant: 1970 to 2199. */
  static boolean isPlausible(int year) {
    return FIRST_YEAR <= year && year <= LAST_YEAR;
  }

  /** An unmodifiable copy; a missing list or item is a fault and leaves the copy empty. */
  <T> List<T> list(String path, List<T> given) {
    if (!given(path, given, "a list, empty when there is nothing in it")) {
      return List.of();
    }
    boolean whole = true;
    for (int i = 0; i < given.size(); i++) {
      whole &= given(path + "[" + i + "]", given.get(i), "something, or no place in the list");
    }
    return whole ? List.copyOf(given) : List.of();
  }

  /** An unmodifiable copy with at least one item. */
  <T> List<T> someOf(String path, List<T> given, String what) {
    that(given == null || !given.isEmpty(), path, "an empty list", "at least one " + what);
    return list(path, given);
  }

  /**
   * No two items may share a key.
   *
   * @param member the path from an item to its key, such as ".id"
   */
  <T> void distinct(String path, List<T> items, Function<T, ?> key, String member) {
    Map<Object, Integer> first = new HashMap<>();
    for (int i = 0; i < items.size(); i++) {
      Object value = key.apply(items.get(i));
      Integer earlier = value == null ? null : first.putIfAbsent(value, i);
      if (earlier != null) {
        fault(
            path + "[" + i + "]" + member,
            Show.thing(value),
            "one that is not in this list already, at [" + earlier + "]");
      }
    }
  }

  /** An unmodifiable copy of a day's opening windows: in order, none overlapping. */
  List<Window> windows(String path, List<Window> given) {
    List<Window> windows = list(path, given);
    for (int i = 1; i < windows.size(); i++) {
      Window before = windows.get(i - 1);
      that(
          windows.get(i).startMinute() >= before.endMinute(),
          path + "[" + i + "]",
          Show.text(windows.get(i).toString()),
          "hours that start at or after the end of " + Show.text(before.toString()));
    }
    return windows;
  }
}
