package strickle.safety;

import java.util.List;
import java.util.OptionalInt;

/** A surface is closed after the cure, and the cure is long enough. */
final class SealRule {

  private static final String BECAUSE =
      "A coat shuts in the water that has to leave, and may cloud, blister or peel.";

  private SealRule() {}

  static List<Advice> of(Course course) {
    OptionalInt first = course.firstSeal();
    return first.isPresent() ? judged(course, first.getAsInt()) : List.of();
  }

  private static List<Advice> judged(Course course, int first) {
    double out = course.hours(-1, first);
    double after = course.cureHours(first, course.steps() - 1);
    if (after > out) {
      return List.of(tooSoon(course, first, after));
    }
    return CureNeed.of(course, first, out).stream()
        .map(need -> tooShort(course, first, out, need))
        .toList();
  }

  private static Advice tooSoon(Course course, int first, double after) {
    Doing doing = course.at(first);
    return new Advice(
        course.path(first),
        doing.quoted() + " stands before a cure wait of " + RouteSense.hours(after),
        BECAUSE,
        "Put the cure wait before it, unless the product is made for fresh concrete.",
        "the waits of this route; that a coat comes after the cure is common practice, no source",
        doing.sure());
  }

  private static Advice tooShort(Course course, int first, double out, CureNeed need) {
    Doing doing = course.at(first);
    double cure = course.cureHours(-1, first);
    String cured = cure == 0 ? "with no cure" : RouteSense.hours(cure) + " of it cure";
    return new Advice(
        course.path(first),
        doing.quoted()
            + " may come "
            + RouteSense.hours(out)
            + " out of the mould, "
            + cured
            + ", where "
            + need.words(),
        BECAUSE,
        "Give it an \"after\" with a cure wait, as long as the product's sheet asks for.",
        need.basis(),
        need.sure() && doing.sure());
  }
}
