package strickle.plan.why;

import java.time.LocalDateTime;

/** A change of the studio that the reasons of a late order name; times are local. */
public sealed interface Cure {

  /**
   * More units of a form.
   *
   * @param form its id
   * @param units how many more, 1 or more
   */
  record Forms(String form, int units) implements Cure {}

  /**
   * More places at a station.
   *
   * @param station its id
   * @param places how many more, 1 or more
   */
  record Places(String station, int places) implements Cure {}

  /**
   * Hours for somebody, within one day.
   *
   * @param person their id
   */
  record Hours(String person, LocalDateTime from, LocalDateTime to) implements Cure {}

  /** Another pair of hands, within one day. */
  record Hands(LocalDateTime from, LocalDateTime to) implements Cure {}

  /**
   * A room that is never cooler.
   *
   * @param degreesC its least temperature
   */
  record Warmth(double degreesC) implements Cure {}
}
