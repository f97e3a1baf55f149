package strickle.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strickle.book.After;
import strickle.book.RestsOn;
import strickle.book.Step;
import strickle.book.Use;
import strickle.book.WaitKind;

/** Writes one step of a route: its minutes, the wait before it, who, what and where. */
final class StepEntry {

  private final String name;
  private final List<Use> consumes = new ArrayList<>();
  private int setupMinutes;
  private int minutesEach;
  private WaitKind wait = WaitKind.REST;
  private double hours;
  private OptionalDouble atMostHours = OptionalDouble.empty();
  private List<String> by = List.of();
  private Optional<RestsOn> restsOn = Optional.empty();

  private StepEntry(String name) {
    this.name = name;
  }

  /** A step; without more it follows at once and anybody may do it. */
  static StepEntry step(String name) {
    return new StepEntry(name);
  }

  /** Minutes to set up once for a run, and for each piece. */
  StepEntry takes(int setup, int each) {
    setupMinutes = setup;
    minutesEach = each;
    return this;
  }

  /** The wait before it, at least so many hours. */
  StepEntry after(WaitKind kind, double atLeastHours) {
    wait = kind;
    hours = atLeastHours;
    return this;
  }

  /** The most that wait may be. */
  StepEntry atMost(double mostHours) {
    atMostHours = OptionalDouble.of(mostHours);
    return this;
  }

  /** The only people who may do it. */
  StepEntry by(String... people) {
    by = List.of(people);
    return this;
  }

  /** What every piece uses up. */
  StepEntry uses(String material, String quantity) {
    consumes.add(Entries.use(material, quantity));
    return this;
  }

  /** Where the pieces stand from here until the next step. */
  StepEntry restsOn(String station, int placesEach) {
    restsOn = Optional.of(new RestsOn(station, placesEach));
    return this;
  }

  /** The step as written. */
  Step build() {
    return new Step(
        name,
        setupMinutes,
        minutesEach,
        new After(wait, hours, atMostHours),
        by,
        consumes,
        restsOn);
  }
}
