package strickle.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts numbers into words, the same in every language setting. */
final class Words {

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  private Words() {}

  /** Work: "40 min", "9 h 40 min", "27 h". */
  static String work(long minutes) {
    return joined(minutes / HOUR, "h", minutes % HOUR, "min");
  }

  /** Time that passes: "40 min", "4 h", "3 d 4 h"; minutes are told below a day only. */
  static String span(long minutes) {
    return minutes < DAY ? work(minutes) : joined(minutes / DAY, "d", minutes % DAY / HOUR, "h");
  }

  /** A number of things: "1 lot", "7 lots". */
  static String count(long number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }

  /** A large number with commas: "12,400". */
  static String grouped(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  /** A percentage as it was given: "90 %", "99.5 %". */
  static String percent(double percent) {
    return plain(percent) + " %";
  }

  /** A number as it was given: "5", "-11.7". */
  static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** A chance from 0 to 1, to a tenth of a percent and never more than it is: "91.3 % sure". */
  static String sure(double chance) {
    double tenths = Math.floor(chance * 1000 + 1e-6);
    return String.format(Locale.ROOT, "%.1f %% sure", tenths / 10);
  }

  /** Grams to a tenth, as a scale shows them: "1937.3". */
  static String grams(double grams) {
    return String.format(Locale.ROOT, "%.1f", grams);
  }

  /** Kilograms to a tenth. */
  static String kilograms(double grams) {
    return grams(grams / 1000);
  }

  private static String joined(long large, String largeUnit, long small, String smallUnit) {
    List<String> parts = new ArrayList<>();
    if (large > 0) {
      parts.add(large + " " + largeUnit);
    }
    if (small > 0 || large == 0) {
      parts.add(small + " " + smallUnit);
    }
    return String.join(" ", parts);
  }
}
