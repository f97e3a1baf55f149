package strickle.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Person;
import strickle.book.Window;
import strickle.shop.Calendar;

/** The minute line of an exact week: elapsed whole minutes from the moment the plan begins. */
final class ExactWeekTime {

  private static final int SECONDS = 60;

  private final Instant from;
  private final ZoneId zone;

  ExactWeekTime(OffsetDateTime from, ZoneId zone) {
    this.from = from.toInstant();
    this.zone = zone;
  }

  int minute(Instant at) {
    return Math.toIntExact(Math.floorDiv(at.getEpochSecond() - from.getEpochSecond(), SECONDS));
  }

  int minute(LocalDateTime local) {
    return minute(local.atZone(zone).toInstant());
  }

  OffsetDateTime at(long minute) {
    return from.plusSeconds(minute * SECONDS).atZone(zone).toOffsetDateTime();
  }

  ZoneId zone() {
    return zone;
  }

  /** When a person may work, up to the horizon; of windows that overlap the later gives way. */
  Calendar calendar(Person person, int horizon) {
    List<Integer> opens = new ArrayList<>();
    List<Integer> closes = new ArrayList<>();
    LocalDate last = at(horizon).toLocalDate();
    int closed = 0;
    for (LocalDate day = at(0).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
      for (Window window : person.hoursOn(day)) {
        LocalDateTime midnight = day.atStartOfDay();
        int open = Math.max(closed, minute(midnight.plusMinutes(window.startMinute())));
        int close = Math.min(horizon, minute(midnight.plusMinutes(window.endMinute())));
        if (open < close) {
          opens.add(open);
          closes.add(close);
          closed = close;
        }
      }
    }
    return Calendar.of(
        opens.stream().mapToInt(i -> i).toArray(), closes.stream().mapToInt(i -> i).toArray());
  }
}
