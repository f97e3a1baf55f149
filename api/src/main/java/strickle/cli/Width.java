package strickle.cli;

import java.lang.Character.UnicodeScript;
import java.util.Set;

/** How many columns of a terminal a text takes. */
final class Width {

  /** First of the characters of double width that are of no script below. */
  private static final int FIRST_FULLWIDTH = 0xFF01;

  private static final int LAST_FULLWIDTH = 0xFF60;

  private static final Set<UnicodeScript> DOUBLE =
      Set.of(
          UnicodeScript.HAN,
          UnicodeScript.HANGUL,
          UnicodeScript.HIRAGANA,
          UnicodeScript.KATAKANA,
          UnicodeScript.BOPOMOFO);

  private Width() {}

  /** Columns of a text: accents on letters take none, Chinese, Japanese and Korean signs two. */
  static int of(String text) {
    return text.codePoints().map(Width::of).sum();
  }

  /** The index in a text behind as many whole characters as fit in so many columns. */
  static int fitting(String text, int columns) {
    int index = 0;
    int taken = 0;
    while (index < text.length()) {
      int next = text.codePointAt(index);
      taken += of(next);
      if (taken > columns) {
        return index;
      }
      index += Character.charCount(next);
    }
    return index;
  }

  private static int of(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
      default -> isDouble(codePoint) ? 2 : 1;
    };
  }

  private static boolean isDouble(int codePoint) {
    return DOUBLE.contains(UnicodeScript.of(codePoint))
        || (FIRST_FULLWIDTH <= codePoint && codePoint <= LAST_FULLWIDTH);
  }
}
