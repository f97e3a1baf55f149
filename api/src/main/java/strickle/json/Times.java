package strickle.json;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Dates and times as both files write them (ISO 8601): to the minute, years of four digits. In a
 * book times are local to the studio, in a plan each carries its offset, +00:00 included.
 */
final class Times {

  private static final int DATE_LENGTH = "2027-04-05".length();
  private static final int LOCAL_LENGTH = "2027-04-05T09:00".length();

  private static final DateTimeFormatter DATE = strict("uuuu-MM-dd");
  private static final DateTimeFormatter LOCAL = strict("uuuu-MM-dd'T'HH:mm");
  private static final DateTimeFormatter READ_OFFSET = strict("uuuu-MM-dd'T'HH:mmXXX");
  private static final DateTimeFormatter WRITTEN_OFFSET = strict("uuuu-MM-dd'T'HH:mmxxx");

  private Times() {}

  static ValueReader<LocalDate> dates() {
    return new TextReader<>(
        "a date such as \"2027-04-05\"",
        text -> LocalDate.parse(sized(text, DATE_LENGTH, DATE_LENGTH), DATE));
  }

  static ValueReader<LocalDateTime> localTimes() {
    return new TextReader<>(
        "a local time such as \"2027-04-05T09:00\", without seconds or offset",
        text -> LocalDateTime.parse(sized(text, LOCAL_LENGTH, LOCAL_LENGTH), LOCAL));
  }

  static ValueReader<OffsetDateTime> offsetTimes() {
    return new TextReader<>(
        "a time with its offset such as \"2027-04-05T09:00-04:00\", without seconds",
        text ->
            OffsetDateTime.parse(
                sized(text, LOCAL_LENGTH + "Z".length(), LOCAL_LENGTH + "-04:00".length()),
                READ_OFFSET));
  }

  static String written(LocalDate date) {
    return DATE.format(date);
  }

  static String written(LocalDateTime time) {
    return LOCAL.format(time);
  }

  static String written(OffsetDateTime time) {
    if (!time.equals(time.truncatedTo(ChronoUnit.MINUTES))) {
      throw new IllegalArgumentException(time + " is not a whole minute");
    }
    return WRITTEN_OFFSET.format(time);
  }

  // The patterns alone would take years of more digits and with a sign.
  private static String sized(String text, int least, int most) {
    if (text.length() < least || text.length() > most) {
      throw new DateTimeException(text);
    }
    return text;
  }

  private static DateTimeFormatter strict(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ROOT)
        .withResolverStyle(ResolverStyle.STRICT);
  }
}
