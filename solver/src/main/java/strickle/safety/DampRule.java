package strickle.safety;

import java.util.ArrayList;
import java.util.List;

/** Paint and leaf want a piece that is sealed or dry. */
final class DampRule {

  private DampRule() {}

  static List<Advice> of(Course course) {
    List<Advice> advice = new ArrayList<>();
    int wetted = -1;
    for (int step = 0; step < course.steps(); step++) {
      Doing doing = course.at(step);
      boolean colours = doing.does(Act.LEAF) || (doing.does(Act.PAINT) && !likesDamp(doing));
      double dry = course.hours(wetted, step);
      // One that seals, washes and paints at once does that in the order of its words; who knows.
      if (colours && !doing.does(Act.SEAL) && dry < RouteSense.DAMP_HOURS) {
        advice.add(said(course, step, wetted, dry));
      }
      if (doing.coats() || doing.does(Act.LEAF)) {
        return advice;
      }
      wetted = doing.wet() ? step : wetted;
    }
    return advice;
  }

  private static boolean likesDamp(Doing doing) {
    return Vocabulary.names(doing.step().step(), Vocabulary.LIKES_DAMP);
  }

  private static Advice said(Course course, int step, int wetted, double dry) {
    Doing doing = course.at(step);
    String since = wetted < 0 ? "the mould" : course.at(wetted).quoted();
    String what = doing.does(Act.LEAF) ? "Leaf" : "Paint";
    return new Advice(
        course.path(step),
        doing.quoted()
            + " may come "
            + RouteSense.hours(dry)
            + " after "
            + since
            + ", on a piece that nothing has sealed",
        what + " does not hold on damp concrete, and its lime stains what lies on it.",
        "Seal the piece first, or let it dry; how dry is on the product's sheet.",
        "common practice, no source: damp for " + RouteSense.hours(RouteSense.DAMP_HOURS),
        doing.sure());
  }
}
