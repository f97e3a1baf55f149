package strickle.book;

import java.util.OptionalDouble;

/**
 * The wait between the end of the task before a step and the step.
 *
 * @param kind what is waited for; in JSON the field is "wait", a name Java keeps for itself
 * @param hours the fewest elapsed hours, 0 to 8760; for a cure, hours at 20 °C
 * @param atMostHours the most elapsed hours, never adjusted for temperature; from {@code hours} to
 *     8760, or empty when any longer wait will do
 */
public record After(WaitKind kind, double hours, OptionalDouble atMostHours) {

  /**
   * Checks the wait.
   *
   * @throws Faulty with every fault, paths relative to the wait
   */
  public After {
    Check check = new Check();
    check.given(".wait", kind, "cure, dry or rest");
    check.hours(".hours", hours);
    check.atMostHours(".atMostHours", atMostHours, hours);
    check.done();
  }
}
