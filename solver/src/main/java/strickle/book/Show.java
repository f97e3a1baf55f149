package strickle.book;

import java.math.BigDecimal;
import java.util.Locale;

/** Puts values into the words in which a fault tells what was found. */
final class Show {

  /** What a fault says of a value that is not there. */
  static final String NOTHING = "nothing";

  private static final int LONGEST = 80;

  private Show() {}

  /**
   * A text in double quotes, with control characters made visible and cut after 80 characters, so
   * that a fault stays one readable line whatever was given.
   */
  static String text(String text) {
    if (text == null) {
      return NOTHING;
    }
    StringBuilder shown = new StringBuilder("\"");
    text.codePoints().limit(LONGEST).forEach(c -> append(shown, c));
    boolean cut = text.codePointCount(0, text.length()) > LONGEST;
    return shown.append(cut ? "…\"" : "\"").toString();
  }

  private static void append(StringBuilder shown, int codePoint) {
    if (isUnprintable(codePoint)) {
      shown.append(String.format(Locale.ROOT, "\\u%04x", codePoint));
    } else {
      shown.appendCodePoint(codePoint);
    }
  }

  /** Control characters, line separators and halves of a surrogate pair: nothing a name needs. */
  static boolean isUnprintable(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  /** A number without a needless fraction: 5.0 is shown as 5. */
  static String number(double value) {
    if (Double.isNaN(value)) {
      return "not a number";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "an infinite number" : "a negative infinite number";
    }
    boolean plain = value == Math.rint(value) && Math.abs(value) < 1e15;
    return plain ? Long.toString((long) value) : Double.toString(value);
  }

  /** A decimal number as it was written, or in powers of ten where that would be very long. */
  static String number(BigDecimal value) {
    if (value == null) {
      return NOTHING;
    }
    String written = Math.abs((long) value.scale()) > 20 ? value.toString() : value.toPlainString();
    return written.length() > LONGEST ? written.substring(0, LONGEST) + "…" : written;
  }

  /** Anything else by its own words, or "nothing". */
  static String thing(Object thing) {
    return switch (thing) {
      case null -> NOTHING;
      case String text -> text(text);
      default -> thing.toString();
    };
  }
}
