package strickle.book;

import java.time.LocalDateTime;
import java.util.OptionalDouble;

/**
 * The climate of the room from a moment until the next entry.
 *
 * @param from local time in whole minutes
 * @param temperatureC air temperature in degrees Celsius, −30 to 60
 * @param humidityPercent relative humidity, 0 to 100, or empty when nobody measured it
 */
public record Climate(LocalDateTime from, double temperatureC, OptionalDouble humidityPercent) {

  /**
   * Checks the entry.
   *
   * @throws Faulty with every fault, paths relative to the entry
   */
  public Climate {
    Check check = new Check();
    check.moment(".from", from);
    check.number(".temperatureC", temperatureC, -30, 60);
    check.number(".humidityPercent", humidityPercent, 0, 100);
    check.done();
  }
}
