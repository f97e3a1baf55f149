package strickle.cure;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import strickle.book.Climate;

/**
 * How fast concrete ages in the room, moment by moment, and when a wait given in hours at 20 °C is
 * over there. Before the first climate, and without any, an hour counts as an hour.
 */
public final class RoomPace {

  /** The longest wait taken, in hours (114 years). */
  public static final double MOST_HOURS = 1e6;

  /** So that 20 hours at pace 1 are 1200 minutes, whatever the last digit of a sum says. */
  private static final double TOLERANCE_HOURS = 1e-9;

  private static final double SECONDS_PER_HOUR = 3600;
  private static final int SECONDS_PER_MINUTE = 60;

  private final List<Pace> paces;

  private RoomPace(List<Pace> paces) {
    this.paces = paces;
  }

  /**
   * The pace of a room.
   *
   * @param climate in any order; of two that begin at the same moment the later in the list counts
   * @param timeZone where the climate's local times are read; a time skipped by a clock change is
   *     moved forward by the gap, of a time that comes twice the first is meant
   * @throws IllegalArgumentException for a temperature {@link EquivalentAge#factor} does not take
   */
  public static RoomPace of(List<Climate> climate, ZoneId timeZone) {
    TreeMap<Instant, Double> factors = new TreeMap<>();
    climate.stream()
        .sorted(Comparator.comparing(Climate::from))
        .forEach(
            entry ->
                factors.put(
                    entry.from().atZone(timeZone).toInstant(),
                    EquivalentAge.factor(entry.temperatureC())));
    return new RoomPace(
        factors.entrySet().stream().map(e -> new Pace(e.getKey(), e.getValue())).toList());
  }

  /** Every change of pace, ascending; before the first the factor is exactly 1. */
  public List<Pace> paces() {
    return paces;
  }

  /**
   * Hours of age gained between two moments: the integral of the factor, a sum of whole stretches.
   *
   * @param to not before {@code from}
   * @return 0 or more
   * @throws IllegalArgumentException when {@code to} is before {@code from}
   */
  public double hours(Instant from, Instant to) {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException(
          "A wait cannot end at " + to + ", before it begins at " + from + ".");
    }
    double sum = 0;
    Instant at = from;
    for (int next = firstAfter(from); at.isBefore(to); next++) {
      Instant end = next < paces.size() ? earlier(paces.get(next).from(), to) : to;
      sum += factorBefore(next) * elapsedHours(at, end);
      at = end;
    }
    return sum;
  }

  /**
   * The first whole minute at which so many hours of age have been gained since {@code from}.
   *
   * @param hours at 20 °C, from 0 to {@value #MOST_HOURS}
   * @throws IllegalArgumentException for hours outside that range
   */
  public Instant end(Instant from, double hours) {
    if (!(hours >= 0 && hours <= MOST_HOURS)) {
      throw new IllegalArgumentException(
          "A wait of " + hours + " hours cannot be; it is from 0 to 1000000 hours.");
    }
    Instant end = wholeMinute(from, about(from, hours));
    while (!isOver(from, end, hours)) {
      end = end.plusSeconds(SECONDS_PER_MINUTE);
    }
    Instant earlier = end.minusSeconds(SECONDS_PER_MINUTE);
    while (!earlier.isBefore(from) && isOver(from, earlier, hours)) {
      end = earlier;
      earlier = end.minusSeconds(SECONDS_PER_MINUTE);
    }
    return end;
  }

  private boolean isOver(Instant from, Instant to, double hours) {
    return hours(from, to) + TOLERANCE_HOURS >= hours;
  }

  /** Seconds from {@code from} to the end of the wait, right but for rounding. */
  private double about(Instant from, double hours) {
    double left = hours;
    Instant at = from;
    int next = firstAfter(from);
    for (; next < paces.size(); next++) {
      Instant change = paces.get(next).from();
      double gained = factorBefore(next) * elapsedHours(at, change);
      if (gained >= left) {
        break;
      }
      left -= gained;
      at = change;
    }
    return (elapsedHours(from, at) + left / factorBefore(next)) * SECONDS_PER_HOUR;
  }

  /**
   * The place of the first change after {@code moment}; the number of changes when there is none.
   */
  private int firstAfter(Instant moment) {
    int low = 0;
    int high = paces.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (paces.get(middle).from().isAfter(moment)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private double factorBefore(int change) {
    return change == 0 ? 1 : paces.get(change - 1).factor();
  }

  /** The first whole minute at or after {@code from} plus {@code seconds}, cut to whole ones. */
  private static Instant wholeMinute(Instant from, double seconds) {
    Instant moment = from.plusSeconds((long) seconds);
    Instant minute = moment.truncatedTo(ChronoUnit.MINUTES);
    return minute.equals(moment) ? minute : minute.plusSeconds(SECONDS_PER_MINUTE);
  }

  private static Instant earlier(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }

  private static double elapsedHours(Instant from, Instant to) {
    double seconds =
        (to.getEpochSecond() - from.getEpochSecond()) + (to.getNano() - from.getNano()) / 1e9;
    return seconds / SECONDS_PER_HOUR;
  }
}
