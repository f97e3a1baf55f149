package strickle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is glued is laid and pressed while the glue is open. How long that is, the step or its glue
 * may say; else the most waits until it is laid say so, within what is usual.
 */
final class GlueRule {

  private static final String BECAUSE = "Glue that has skinned over does not hold.";

  private GlueRule() {}

  static List<Advice> of(Course course) {
    List<Advice> advice = new ArrayList<>();
    for (int step = 0; step < course.steps(); step++) {
      if (course.at(step).does(Act.GLUE)) {
        inOneGo(course, step).ifPresent(advice::add);
        OptionalInt laid = laidAt(course, step);
        if (laid.isPresent()) {
          apart(course, step, laid.getAsInt()).ifPresent(advice::add);
        }
      }
    }
    return advice;
  }

  /** Where it is laid, or pressed when it was laid at once; none when another glue comes first. */
  private static OptionalInt laidAt(Course course, int step) {
    boolean atOnce = course.at(step).lays();
    for (int i = step + 1; i < course.steps() && !course.at(i).does(Act.GLUE); i++) {
      if (atOnce ? course.at(i).does(Act.PRESS) : course.at(i).lays()) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Glued and laid piece by piece: the open time has to reach for one piece. */
  private static Optional<Advice> inOneGo(Course course, int step) {
    int each = course.at(step).step().minutesEach();
    OpenTime open = OpenTime.of(course, step).orElseGet(OpenTime::usual);
    return course.at(step).lays() && each > open.minutes()
        ? Optional.of(tooLong(course, step, "one piece takes " + each + " min", open))
        : Optional.empty();
  }

  /** Glued in one step and laid in a later one: a piece waits for others, and for the route. */
  private static Optional<Advice> apart(Course course, int step, int laid) {
    GlueWait wait = GlueWait.of(course, step, laid);
    Optional<OpenTime> said = OpenTime.of(course, step);
    OpenTime open = said.orElseGet(() -> unsaid(course, wait, laid));
    if (wait.leastMinutes() > open.minutes()) {
      String least = "in a typical run of " + course.pieces() + " a piece waits ";
      String minutes = Math.round(wait.leastMinutes()) + " min until it is laid";
      return Optional.of(tooLong(course, step, least + minutes, open));
    }
    if (wait.mostMinutes().isEmpty()) {
      return Optional.of(unbounded(course, step, laid));
    }
    double most = wait.mostMinutes().getAsDouble();
    boolean leaf = said.isEmpty() && course.at(laid).does(Act.LEAF);
    OpenTime least = said.orElseGet(OpenTime::usual);
    double late = said.isPresent() ? most : most - wait.workMinutes();
    return !leaf && late > least.minutes()
        ? Optional.of(tooLong(course, step, upTo(late), least))
        : Optional.empty();
  }

  private static OpenTime unsaid(Course course, GlueWait wait, int laid) {
    double most = wait.mostMinutes().orElse(Double.POSITIVE_INFINITY) - wait.workMinutes();
    return new OpenTime(most, course.path(laid) + ".after.atMostHours");
  }

  private static String upTo(double minutes) {
    return "the route lets a piece wait up to " + Math.round(minutes) + " min until it is laid";
  }

  private static Advice tooLong(Course course, int step, String what, OpenTime open) {
    Doing glue = course.at(step);
    return new Advice(
        course.path(step),
        glue.quoted()
            + ": "
            + what
            + ", and the glue is open for "
            + Math.round(open.minutes())
            + " min",
        BECAUSE,
        "Glue and lay piece by piece in one step, give a shorter most wait, or make the run"
            + " smaller.",
        open.basis(),
        glue.sure() && !open.equals(OpenTime.usual()));
  }

  private static Advice unbounded(Course course, int step, int laid) {
    return new Advice(
        course.path(laid) + ".after.atMostHours",
        "nothing keeps "
            + course.at(laid).quoted()
            + " within the open time of "
            + course.at(step).quoted(),
        BECAUSE,
        "Give the open time there as the most wait, or glue and lay in one step.",
        "the route, which has no most wait there",
        course.at(step).sure());
  }
}
