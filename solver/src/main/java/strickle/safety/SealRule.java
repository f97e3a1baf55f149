package strickle.safety;

import java.util.List;
import java.util.stream.IntStream;

/** A surface is closed after the cure, not before it. */
final class SealRule {

  private static final String BECAUSE =
      "A coat shuts in the water that has to leave, and may cloud, blister or peel.";

  private SealRule() {}

  static List<Advice> of(Course course) {
    return IntStream.range(0, course.steps())
        .filter(step -> course.at(step).does(Act.SEAL))
        .limit(1)
        .boxed()
        .flatMap(first -> judged(course, first).stream())
        .toList();
  }

  private static List<Advice> judged(Course course, int first) {
    double before = course.cureHours(-1, first);
    double after = course.cureHours(first, course.steps() - 1);
    if (after > before) {
      return List.of(tooSoon(course, first, after));
    }
    double out = course.hours(-1, first);
    return before == 0 && out < RouteSense.GREEN_HOURS
        ? List.of(green(course, first, out))
        : List.of();
  }

  private static Advice tooSoon(Course course, int first, double after) {
    Doing doing = course.at(first);
    return new Advice(
        course.path(first),
        doing.quoted() + " stands before a cure wait of " + RouteSense.hours(after),
        BECAUSE,
        "Put the cure wait before it, unless the product is made for fresh concrete.",
        doing.sure());
  }

  private static Advice green(Course course, int first, double out) {
    Doing doing = course.at(first);
    return new Advice(
        course.path(first),
        doing.quoted() + " may come " + RouteSense.hours(out) + " out of the mould, with no cure",
        BECAUSE,
        "Give it an \"after\" with a cure wait, as long as the product's sheet asks for.",
        doing.sure());
  }
}
