package strickle.book;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Opening hours within one local day.
 *
 * @param startMinute the first minute open, in minutes after midnight, 0 to 1439
 * @param endMinute the first minute closed again, above {@code startMinute}, at most 1440
 */
public record Window(int startMinute, int endMinute) {

  private static final int DAY = 1440;
  private static final int HOUR = 60;
  private static final String LIKE = "hours like \"09:00-12:00\"";
  private static final Pattern HOURS =
      Pattern.compile("([01][0-9]|2[0-4]):([0-5][0-9])-([01][0-9]|2[0-4]):([0-5][0-9])");

  /**
   * Checks the window.
   *
   * @throws Faulty with an empty path, as a file writes a window as one text
   */
  public Window {
    Check check = new Check();
    check.that(
        0 <= startMinute && startMinute < endMinute && endMinute <= DAY,
        "",
        "minutes " + startMinute + " to " + endMinute + " of a day",
        LIKE + " that end after they start, by 24:00 of the same day");
    check.done();
  }

  /**
   * Reads hours as a file writes them.
   *
   * @param hours like {@code 09:00-12:00}; the end may be {@code 24:00}
   * @throws Faulty when they are anything else
   */
  public static Window parse(String hours) {
    Matcher matcher = HOURS.matcher(hours == null ? "" : hours);
    if (matcher.matches()) {
      int start = minute(matcher, 1);
      int end = minute(matcher, 3);
      if (start < end && end <= DAY) {
        return new Window(start, end);
      }
      throw refused(hours, LIKE + " that end after they start, by 24:00 of the same day");
    }
    throw refused(hours, LIKE);
  }

  private static int minute(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group)) * HOUR
        + Integer.parseInt(matcher.group(group + 1));
  }

  private static Faulty refused(String hours, String right) {
    return new Faulty(List.of(new Fault("", Show.text(hours), right)));
  }

  /** How long the window is, in minutes of the clock. */
  public int minutes() {
    return endMinute - startMinute;
  }

  /** The hours as a file writes them, such as {@code 09:00-12:00}. */
  @Override
  public String toString() {
    return time(startMinute) + "-" + time(endMinute);
  }

  private static String time(int minute) {
    return String.format(Locale.ROOT, "%02d:%02d", minute / HOUR, minute % HOUR);
  }
}
