package strickle.paper;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Writes content lines of a calendar as RFC 5545 has them: folded, escaped, ended by CRLF. */
final class CalendarText {

  /** Octets of a line, without its end (RFC 5545, §3.1). */
  private static final int LONGEST = 75;

  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final StringBuilder lines = new StringBuilder();

  /** A line whose value needs no escaping. */
  CalendarText line(String name, String value) {
    int octets = 0;
    String whole = name + ":" + value;
    for (int i = 0; i < whole.length(); i += Character.charCount(whole.codePointAt(i))) {
      int sign = whole.codePointAt(i);
      if (octets + octets(sign) > LONGEST) {
        lines.append("\r\n ");
        octets = 1;
      }
      lines.appendCodePoint(sign);
      octets += octets(sign);
    }
    lines.append("\r\n");
    return this;
  }

  /** A line with a text, escaped (§3.3.11). */
  CalendarText text(String name, String value) {
    StringBuilder escaped = new StringBuilder();
    value.codePoints().forEach(sign -> append(escaped, sign));
    return line(name, escaped.toString());
  }

  /** A line with a moment, in UTC (§3.3.5). */
  CalendarText moment(String name, Instant at) {
    return line(name, UTC.format(at));
  }

  /** All lines. */
  String all() {
    return lines.toString();
  }

  // Control characters and halves of pairs may not stand there at all.
  private static void append(StringBuilder escaped, int sign) {
    switch (sign) {
      case '\\' -> escaped.append("\\\\");
      case ';' -> escaped.append("\\;");
      case ',' -> escaped.append("\\,");
      case '\n' -> escaped.append("\\n");
      default -> {
        int kind = Character.getType(sign);
        if (kind != Character.CONTROL && kind != Character.SURROGATE) {
          escaped.appendCodePoint(sign);
        }
      }
    }
  }

  // Of UTF-8 (RFC 3629, §3).
  private static int octets(int sign) {
    if (sign < 0x80) {
      return 1;
    }
    return sign < 0x800 ? 2 : sign < 0x10000 ? 3 : 4;
  }
}
