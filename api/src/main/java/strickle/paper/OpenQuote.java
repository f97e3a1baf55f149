package strickle.paper;

import java.util.OptionalLong;

/**
 * Finds a quote that opens a cell and is never closed (RFC 4180). A reader takes all that follows
 * for that cell, so that rows vanish of which nobody is told.
 */
final class OpenQuote {

  private final char separator;
  private boolean isQuoted;
  private boolean isCellEmpty = true;
  private long line = 1;
  private long opened; // in this cell, 0 before any

  private OpenQuote(char separator) {
    this.separator = separator;
  }

  /**
   * The line in which a quote opens that is never closed, from 1; nothing when all are closed.
   *
   * @param separator what parts cells
   */
  static OptionalLong line(String text, char separator) {
    OpenQuote reading = new OpenQuote(separator);
    for (int i = 0; i < text.length(); i++) {
      reading.take(text.charAt(i));
      boolean isHalfOfEnd =
          text.charAt(i) == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      reading.line += isEnd(text.charAt(i)) && !isHalfOfEnd ? 1 : 0;
    }
    return reading.isQuoted ? OptionalLong.of(reading.opened) : OptionalLong.empty();
  }

  // A doubled quote within a cell closes it and opens it again at once.
  private void take(char sign) {
    if (sign == '"' && (isQuoted || isCellEmpty)) {
      opened = opened == 0 ? line : opened;
      isQuoted = !isQuoted;
    } else if (!isQuoted) {
      boolean isNext = sign == separator || isEnd(sign);
      isCellEmpty = isNext || (isCellEmpty && sign <= ' ');
      opened = isNext ? 0 : opened;
    }
  }

  private static boolean isEnd(char sign) {
    return sign == '\n' || sign == '\r';
  }
}
