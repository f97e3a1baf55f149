package strickle.plan.audit;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strickle.book.Climate;

/**
 * When a wait is over: the first whole minute at or after its end.
 *
 * <p>A set or a cure runs at the pace exp(13.65 − 4000/(273 + T)), T in °C (EN 1992-1-1 Annex B,
 * expression B.10), and at the pace 1 before the first climate and without any. Ages are counted
 * once from the first climate on, and the end of a wait is found by halving.
 */
final class WaitEnds {

  /** By how much a wait may fall short or a most-wait be exceeded, in hours. */
  static final double TOLERANCE_HOURS = 1e-9;

  /** A wait that never ends (it is too cold, say) counts as ending a thousand years later. */
  private static final long NEVER_MINUTES = 1000L * 366 * 24 * 60;

  private static final double TOLERANCE_MINUTES = TOLERANCE_HOURS * 60;

  /** From a minute on: the age reached until then, in minutes, and the pace from then on. */
  private record Stretch(long from, double age, double pace) {

    double ageAt(long minute) {
      return age + (minute - from) * pace;
    }
  }

  private final TreeMap<Long, Stretch> stretches = new TreeMap<>();
  private final Stretch before;

  WaitEnds(List<Climate> climate, ZonedMinutes time) {
    TreeMap<Long, Double> paces = new TreeMap<>();
    climate.forEach(c -> paces.put(time.minute(c.from()), pace(c.temperatureC())));
    before = new Stretch(paces.isEmpty() ? 0 : paces.firstKey(), 0, 1);
    Stretch last = before;
    for (Map.Entry<Long, Double> change : paces.entrySet()) {
      last = new Stretch(change.getKey(), last.ageAt(change.getKey()), change.getValue());
      stretches.put(change.getKey(), last);
    }
  }

  /** How many hours at 20 °C one hour at this temperature is worth. */
  static double pace(double temperatureC) {
    return Math.exp(13.65 - 4000 / (273 + temperatureC));
  }

  /** The end of a set or cure of so many hours at 20 °C, begun at a minute. */
  long afterAge(long from, double hours) {
    double goal = ageAt(from) + hours * 60 - TOLERANCE_MINUTES;
    long low = from;
    long high = from + NEVER_MINUTES;
    while (low < high) {
      long middle = low + (high - low) / 2;
      if (ageAt(middle) >= goal) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The end of a wait of so many elapsed hours, begun at a minute. */
  long afterHours(long from, double hours) {
    double minutes = Math.ceil(hours * 60 - TOLERANCE_MINUTES);
    return from + (long) Math.clamp(minutes, 0, NEVER_MINUTES);
  }

  /** Whether from one minute to another no more than so many elapsed hours go by. */
  static boolean isWithin(long from, long to, double atMostHours) {
    return (to - from) / 60.0 <= atMostHours + TOLERANCE_HOURS;
  }

  private double ageAt(long minute) {
    Map.Entry<Long, Stretch> stretch = stretches.floorEntry(minute);
    return (stretch == null ? before : stretch.getValue()).ageAt(minute);
  }
}
