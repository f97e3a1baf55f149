package strickle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Nothing is laid on, rubbed or packed while a coat is wet. */
final class WetCoatRule {

  private static final String BASIS =
      "common practice, no source: a coat may be wet for "
          + RouteSense.hours(RouteSense.WET_COAT_HOURS);

  private WetCoatRule() {}

  static List<Advice> of(Course course) {
    List<Advice> advice = new ArrayList<>();
    for (int step = 0; step < course.steps(); step++) {
      OptionalInt coat = lastCoat(course, step);
      if (coat.isPresent() && touches(course, coat.getAsInt(), step)) {
        double dry = course.hours(coat.getAsInt(), step);
        if (dry < RouteSense.WET_COAT_HOURS) {
          advice.add(said(course, coat.getAsInt(), step, dry));
        }
      }
    }
    advice.addAll(atTheEnd(course));
    return advice;
  }

  private static boolean touches(Course course, int coat, int step) {
    Doing doing = course.at(step);
    return !doing.leavesCoatsAlone() && !doing.rubsOut(course.at(coat));
  }

  private static OptionalInt lastCoat(Course course, int before) {
    return IntStream.range(0, before).filter(step -> course.at(step).coats()).max();
  }

  private static Advice said(Course course, int coat, int step, double dry) {
    Doing doing = course.at(step);
    boolean again = doing.coats();
    return new Advice(
        course.path(step),
        doing.quoted() + " may come " + after(dry) + " " + course.at(coat).quoted(),
        again
            ? "A coat on a wet one can wrinkle or stay soft."
            : "A face laid or worked on while the coat is wet is marked, and sticks.",
        again
            ? "Give it a dry wait, unless the product's sheet says wet on wet."
            : "Give it a dry wait, as long as the product's sheet says.",
        BASIS,
        dry == 0 && !again && doing.sure() && course.at(coat).sure());
  }

  /** What was not touched since its last coat is packed with it. */
  private static List<Advice> atTheEnd(Course course) {
    OptionalInt coat = lastCoat(course, course.steps());
    if (coat.isEmpty()) {
      return List.of();
    }
    int last = coat.getAsInt();
    boolean touched =
        IntStream.range(last + 1, course.steps()).anyMatch(step -> touches(course, last, step));
    double dry = course.hours(last, course.steps() - 1) + course.piece().finalDryHours();
    return !touched && dry < RouteSense.WET_COAT_HOURS
        ? List.of(packedWet(course, last, dry))
        : List.of();
  }

  private static Advice packedWet(Course course, int last, double dry) {
    return new Advice(
        course.path() + ".finalDryHours",
        "the piece is ready, and may be packed, " + after(dry) + " " + course.at(last).quoted(),
        "What touches a wet coat marks it, and sticks.",
        "Give finalDryHours, as long as the product's sheet says.",
        BASIS,
        dry == 0 && course.at(last).sure());
  }

  private static String after(double dry) {
    return dry == 0 ? "right after" : RouteSense.hours(dry) + " after";
  }
}
