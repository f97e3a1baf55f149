package strickle.api;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import strickle.book.Fault;
import strickle.book.Faulty;

/** What is asked of the planner over HTTP. */
final class Wanted {

  private static final long USUAL_SECONDS = 10;
  private static final long MOST_SECONDS = 3600;
  private static final long MOST_SCHEDULES = 1_000_000_000;

  private Wanted() {}

  /**
   * A plan from the start.
   *
   * @param from the first moment that may be planned, local; today without it, or the first climate
   *     of the book if that is still to come
   * @param seconds how long to search, 1 to 3600; 10 without it
   * @param schedules how many schedules to look at instead, 1 to 1000000000: the same book, start,
   *     seed and number give the same plan every time
   * @param seed where the search's chance begins; 0 without it
   * @param coverPercent in how many of a hundred cases castings have to bring what is asked for, 50
   *     to 99.9; without it they do on average
   * @param orderingFrom let every task that uses a material which is short in stock wait until it
   *     can be there, ordered from this local moment on; without it materials are not waited for
   */
  public record PlanWanted(
      Optional<LocalDateTime> from,
      OptionalLong seconds,
      OptionalLong schedules,
      OptionalLong seed,
      OptionalDouble coverPercent,
      Optional<LocalDateTime> orderingFrom) {

    /** Refuses an effort out of range. */
    public PlanWanted {
      checkEffort(seconds, schedules, List.of());
    }

    /** How long to search; nothing when schedules are given. */
    OptionalLong effortSeconds() {
      return orUsual(seconds, schedules);
    }
  }

  /**
   * A plan under way, to be laid out anew.
   *
   * @param plan the id of the present plan; the plan in use without it
   * @param now what time it is in the studio, local; the present minute without it
   * @param frozenUntil what the present plan begins before this keeps person and time unless that
   *     has become impossible, local; the end of today without it
   * @param frozenHours the same, so many hours from now, 0 to 8760
   * @param seconds how long to search, 1 to 3600; 10 without it
   * @param schedules how many schedules to look at instead, 1 to 1000000000
   * @param seed where the search's chance begins; 0 without it
   */
  public record ReplanWanted(
      Optional<String> plan,
      Optional<LocalDateTime> now,
      Optional<LocalDateTime> frozenUntil,
      OptionalLong frozenHours,
      OptionalLong seconds,
      OptionalLong schedules,
      OptionalLong seed) {

    private static final long MOST_HOURS = 8760;

    /** Refuses what is out of range, and two ways to say one thing. */
    public ReplanWanted {
      List<Fault> faults = new ArrayList<>();
      checkRange(".frozenHours", frozenHours, 0, MOST_HOURS, faults);
      if (frozenHours.isPresent() && frozenUntil.isPresent()) {
        faults.add(new Fault(".frozenHours", "both", "either frozenHours or frozenUntil"));
      }
      checkEffort(seconds, schedules, faults);
    }

    /** How long to search; nothing when schedules are given. */
    OptionalLong effortSeconds() {
      return orUsual(seconds, schedules);
    }
  }

  private static OptionalLong orUsual(OptionalLong seconds, OptionalLong schedules) {
    return schedules.isPresent()
        ? OptionalLong.empty()
        : OptionalLong.of(seconds.orElse(USUAL_SECONDS));
  }

  private static void checkEffort(OptionalLong seconds, OptionalLong schedules, List<Fault> known) {
    List<Fault> faults = new ArrayList<>(known);
    checkRange(".seconds", seconds, 1, MOST_SECONDS, faults);
    checkRange(".schedules", schedules, 1, MOST_SCHEDULES, faults);
    if (seconds.isPresent() && schedules.isPresent()) {
      faults.add(new Fault(".schedules", "both", "either schedules or seconds"));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }

  /** Notes a number that is out of range. */
  static void checkRange(
      String path, OptionalLong number, long least, long most, List<Fault> faults) {
    number.stream()
        .filter(value -> value < least || value > most)
        .forEach(
            value ->
                faults.add(
                    new Fault(
                        path,
                        Long.toString(value),
                        "a whole number from " + least + " to " + most)));
  }
}
