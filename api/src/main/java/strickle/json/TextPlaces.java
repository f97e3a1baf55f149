package strickle.json;

import tools.jackson.databind.node.StringNode;

/**
 * Finds lines, columns and words in a text, for faults that have no path.
 *
 * @param text the text
 */
record TextPlaces(String text) {

  private static final int LONGEST_WORD = 20;

  /** A place in words; lines and columns count from 1. */
  String at(long offset) {
    int line = 1;
    int start = 0;
    int end = within(offset);
    for (int i = 0; i < end; i++) {
      if (endsLine(i)) {
        line++;
        start = i + 1;
      }
    }
    return " at line " + line + ", column " + (text.codePointCount(start, end) + 1);
  }

  /** The word or number around a place, or the character there, with the place. */
  String word(long offset) {
    int start = within(offset);
    while (isPartOfWord(start) && isPartOfWord(start - 1)) {
      start--;
    }
    int end = start;
    while (isPartOfWord(end) && end - start < LONGEST_WORD) {
      end++;
    }
    return end > start ? shown(start, end) + at(start) : character(start);
  }

  /** Whether a word or number ends right before a place. */
  boolean endsWord(long offset) {
    int end = within(offset);
    return isPartOfWord(end - 1) && !isPartOfWord(end);
  }

  /** The character at a place, with the place. */
  String character(long offset) {
    int start = within(offset);
    return start == text.length()
        ? "the end of the text" + at(start)
        : shown(start, text.offsetByCodePoints(start, 1)) + at(start);
  }

  // A double quote inside double quotes would have to be escaped, which is hard to read.
  private String shown(int start, int end) {
    String part = text.substring(start, end);
    return part.equals("\"") ? "'\"'" : StringNode.valueOf(part).toString();
  }

  private int within(long offset) {
    return (int) Math.clamp(offset, 0L, (long) text.length());
  }

  private boolean endsLine(int offset) {
    char unit = text.charAt(offset);
    return unit == '\n'
        || (unit == '\r' && (offset + 1 == text.length() || text.charAt(offset + 1) != '\n'));
  }

  private boolean isPartOfWord(int offset) {
    return offset >= 0
        && offset < text.length()
        && (Character.isLetterOrDigit(text.charAt(offset))
            || "+-._".indexOf(text.charAt(offset)) >= 0);
  }
}
