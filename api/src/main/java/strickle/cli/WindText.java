package strickle.cli;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.cure.Evaporation;

/** Reads a speed of the wind: km/h, m/s or mph; a bare number is km/h. */
final class WindText {

  private static final Pattern SPEED =
      Pattern.compile("([0-9]{1,6}(?:[.][0-9]{1,9})?)\\s*(km/h|m/s|mph)?");

  /** A mile is 1.609344 km, exactly (1760 yards of 0.9144 m). */
  private static final Map<String, Double> KM_PER_HOUR =
      Map.of("km/h", 1.0, "m/s", 3.6, "mph", 1.609344);

  private WindText() {}

  /**
   * A wind in km/h, 0 to 100.
   *
   * @throws Faulty with one fault, its path empty
   */
  static double read(String text) {
    Matcher speed = SPEED.matcher(text.strip());
    if (speed.matches()) {
      String unit = speed.group(2) == null ? "km/h" : speed.group(2);
      double kmPerHour = Double.parseDouble(speed.group(1)) * KM_PER_HOUR.get(unit);
      if (kmPerHour <= Evaporation.MOST_WIND_KM_PER_HOUR) {
        return kmPerHour;
      }
    }
    String right = "a wind such as 10 km/h, 3 m/s or 6 mph, at most 100 km/h";
    throw new Faulty(List.of(new Fault("", '"' + text + '"', right)));
  }
}
