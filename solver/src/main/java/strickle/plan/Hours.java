package strickle.plan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Person;
import strickle.book.Window;
import strickle.shop.Calendar;

/** Turns a person's opening hours into a calendar on the minute line. */
final class Hours {

  private Hours() {}

  /**
   * The person's calendar from minute 0 to the horizon. Where a clock change makes two windows of a
   * day run into each other, the later one gives way.
   */
  static Calendar calendar(Person person, StudioTime time, int horizonMinutes) {
    List<Integer> opens = new ArrayList<>();
    List<Integer> closes = new ArrayList<>();
    LocalDate last = time.local(horizonMinutes).toLocalDate();
    int closed = 0;
    for (LocalDate day = time.local(0).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
      for (Window window : person.hoursOn(day)) {
        int open = (int) Math.max(closed, time.minute(local(day, window.startMinute())));
        int close = (int) Math.min(horizonMinutes, time.minute(local(day, window.endMinute())));
        if (open < close) {
          opens.add(open);
          closes.add(close);
          closed = close;
        }
      }
    }
    return Calendar.of(ints(opens), ints(closes));
  }

  private static LocalDateTime local(LocalDate day, int minute) {
    return day.atStartOfDay().plusMinutes(minute);
  }

  private static int[] ints(List<Integer> values) {
    return values.stream().mapToInt(Integer::intValue).toArray();
  }
}
