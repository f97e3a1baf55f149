package strickle.book;

import java.util.List;
import java.util.Optional;

/**
 * One attended step of a route. It takes {@code setupMinutes} and, for each piece of the run,
 * {@code minutesEach}; together at least a minute.
 *
 * @param step what is done, 1 to 200 characters
 * @param setupMinutes minutes for a run of any size, 0 to 100000
 * @param minutesEach minutes for each piece, 0 to 100000
 * @param after the wait before it
 * @param by ids of the people who may do it; empty when anyone may
 * @param consumes what one piece uses up in it
 * @param restsOn where the pieces lie from its start on, or empty
 */
public record Step(
    String step,
    int setupMinutes,
    int minutesEach,
    After after,
    List<String> by,
    List<Use> consumes,
    Optional<RestsOn> restsOn) {

  /**
   * Checks the step and copies its lists.
   *
   * @throws Faulty with every fault, paths relative to the step
   */
  public Step {
    Check check = new Check();
    check.name(".step", step);
    check.minutes(".setupMinutes", setupMinutes, 0);
    check.minutes(".minutesEach", minutesEach, 0);
    check.that(
        setupMinutes != 0 || minutesEach != 0,
        ".minutesEach",
        "a step of no minutes",
        "at least 1 minute in setupMinutes or minutesEach, or leave the step out");
    check.given(".after", after, "the wait before the step");
    by = check.list(".by", by);
    checkIds(check, by);
    consumes = check.list(".consumes", consumes);
    check.given(".restsOn", restsOn, "a station or none");
    check.done();
  }

  private static void checkIds(Check check, List<String> by) {
    for (int i = 0; i < by.size(); i++) {
      check.id(".by[" + i + "]", by.get(i));
    }
  }
}
