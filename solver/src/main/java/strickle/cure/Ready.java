package strickle.cure;

import java.util.Optional;

/**
 * When a casting can be expected to be ready: a band, never a minute.
 *
 * @param low hours at the soonest
 * @param likely hours in the middle
 * @param high hours at the latest
 */
public record Ready(double low, double likely, double high) {

  /**
   * By how much a time that a rule of age predicts may be wrong either way, as a fraction. Between
   * 4.4 and 21.1 °C such a rule predicts set times 2.78 times as long, where a handbook's table
   * (value from memory) has 2.42.
   */
  public static final double BAND = 0.2;

  /**
   * Hours until an age is reached in a room of one temperature.
   *
   * @param ageHours hours at 20 °C, above 0
   * @return empty when that age is never reached there
   */
  public static Optional<Ready> at(AgeRule rule, double ageHours, double temperatureC) {
    return at(rule, ageHours * (1 - BAND), ageHours, ageHours * (1 + BAND), temperatureC);
  }

  /** The same for an age that is itself known as a band only; that band is then the answer's. */
  public static Optional<Ready> at(
      AgeRule rule, double low, double likely, double high, double temperatureC) {
    double factor = rule.factor(temperatureC);
    return factor > 0
        ? Optional.of(new Ready(low / factor, likely / factor, high / factor))
        : Optional.empty();
  }
}
