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
      if (coat.isPresent() && !course.at(step).acts().isEmpty()) {
        double dry = course.hours(coat.getAsInt(), step);
        if (dry < RouteSense.WET_COAT_HOURS) {
          advice.add(said(course, coat.getAsInt(), step, dry));
        }
      }
    }
    advice.addAll(atTheEnd(course));
    return advice;
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

  private static List<Advice> atTheEnd(Course course) {
    int last = course.steps() - 1;
    boolean wet =
        last >= 0
            && course.at(last).coats()
            && course.piece().finalDryHours() < RouteSense.WET_COAT_HOURS;
    return wet ? List.of(packedWet(course, last)) : List.of();
  }

  private static Advice packedWet(Course course, int last) {
    double dry = course.piece().finalDryHours();
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
