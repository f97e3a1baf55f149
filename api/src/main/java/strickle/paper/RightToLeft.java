package strickle.paper;

import java.text.Bidi;

/**
 * Puts words written from right to left in the order in which they are drawn, by the Unicode
 * bidirectional algorithm (UAX 9) as Java has it, for a line of an English text. Letters are not
 * joined; a text that is broken into lines should be short.
 */
final class RightToLeft {

  private static final String BRACKETS = "()[]{}<>«»‹›";

  private RightToLeft() {}

  /** The text as it is drawn from left to right. */
  static String drawn(String text) {
    if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
      return text;
    }
    Bidi line = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
    byte[] levels = new byte[line.getRunCount()];
    Object[] runs = new Object[levels.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (byte) line.getRunLevel(i);
      String run = text.substring(line.getRunStart(i), line.getRunLimit(i));
      runs[i] = levels[i] % 2 == 0 ? run : reversed(run);
    }
    Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
    StringBuilder drawn = new StringBuilder();
    for (Object run : runs) {
      drawn.append(run);
    }
    return drawn.toString();
  }

  // A mark stays behind the letter it belongs to.
  private static String reversed(String text) {
    StringBuilder reversed = new StringBuilder();
    int[] signs = text.codePoints().toArray();
    int end = signs.length;
    for (int i = signs.length - 1; i >= 0; i--) {
      if (i == 0 || Character.getType(signs[i]) != Character.NON_SPACING_MARK) {
        for (int k = i; k < end; k++) {
          reversed.appendCodePoint(mirrored(signs[k]));
        }
        end = i;
      }
    }
    return reversed.toString();
  }

  private static int mirrored(int sign) {
    int place = BRACKETS.indexOf(sign);
    return place < 0 ? sign : BRACKETS.charAt(place ^ 1);
  }
}
