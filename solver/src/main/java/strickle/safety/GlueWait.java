package strickle.safety;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import strickle.book.Step;

/**
 * How long the piece of a typical run that waits longest is between its glue and what is laid into
 * it; hours in which nobody works come on top.
 *
 * @param workMinutes of it, the minutes of gluing, of the steps between, and of laying
 * @param leastMinutes with the least waits
 * @param mostMinutes with the most waits; empty when one of them has no end
 */
record GlueWait(double workMinutes, double leastMinutes, OptionalDouble mostMinutes) {

  private static final double MINUTES_PER_HOUR = 60;

  /** Of a route, from a step that glues to the later one that lays. */
  static GlueWait of(Course course, int glue, int laid) {
    double work = work(course, glue, laid);
    double least = work + MINUTES_PER_HOUR * course.hours(glue, laid);
    OptionalDouble most =
        IntStream.rangeClosed(glue + 1, laid)
            .mapToObj(step -> course.at(step).step().after().atMostHours())
            .reduce(OptionalDouble.of(0), GlueWait::sum);
    return new GlueWait(
        work,
        least,
        most.isEmpty() ? most : OptionalDouble.of(work + MINUTES_PER_HOUR * most.getAsDouble()));
  }

  // All are glued, then all are laid in the same order: with slow gluing the first waits longest,
  // with slow laying the last.
  private static double work(Course course, int glue, int laid) {
    Step gluing = course.at(glue).step();
    Step laying = course.at(laid).step();
    int others = course.pieces() - 1;
    double slower = Math.max(gluing.minutesEach(), laying.minutesEach());
    double between = IntStream.range(glue + 1, laid).map(course::minutes).sum();
    return others * slower + between + laying.setupMinutes() + laying.minutesEach();
  }

  private static OptionalDouble sum(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(one.getAsDouble() + other.getAsDouble())
        : OptionalDouble.empty();
  }
}
