package strickle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.book.After;

/**
 * What is glued is laid while the glue is open. How long that is, the step may say in its words
 * ("glue, open 15 min"); else the most wait of the step behind it says so.
 */
final class GlueRule {

  private static final Pattern OPEN =
      Pattern.compile("open(?:\\s+time)?\\s*:?\\s*([0-9]{1,4}(?:[.][0-9]+)?)\\s*(min|h)");

  private static final double MINUTES_PER_HOUR = 60;

  private GlueRule() {}

  static List<Advice> of(Course course) {
    List<Advice> advice = new ArrayList<>();
    for (int step = 0; step < course.steps(); step++) {
      Doing glue = course.at(step);
      boolean last = step + 1 == course.steps();
      if (!glue.does(Act.GLUE)) {
        continue;
      }
      if (glue.does(Act.LAY)) {
        advice.addAll(inOneGo(course, step));
      } else if (!last && lays(course.at(step + 1))) {
        advice.addAll(apart(course, step));
      }
    }
    return advice;
  }

  private static boolean lays(Doing next) {
    return next.does(Act.LAY) || next.does(Act.LEAF);
  }

  /** Glued and laid piece by piece: the open time has to reach for one piece. */
  private static List<Advice> inOneGo(Course course, int step) {
    OptionalDouble open = openMinutes(course.at(step));
    int each = course.at(step).step().minutesEach();
    return open.isPresent() && each > open.getAsDouble()
        ? List.of(tooLong(course, step, "one piece takes", each, open.getAsDouble()))
        : List.of();
  }

  /** Glued in one step and laid in the next: the first piece waits for all the others. */
  private static List<Advice> apart(Course course, int step) {
    After after = course.at(step + 1).step().after();
    OptionalDouble most = after.atMostHours();
    OptionalDouble said = openMinutes(course.at(step));
    OptionalDouble open =
        said.isPresent() || most.isEmpty()
            ? said
            : OptionalDouble.of(most.getAsDouble() * MINUTES_PER_HOUR);
    if (open.isEmpty()) {
      return List.of(unbounded(course, step));
    }
    double waits = firstWaits(course, step) + after.hours() * MINUTES_PER_HOUR;
    if (waits > open.getAsDouble()) {
      String who = "in a typical run of " + course.pieces() + " the first piece waits";
      return List.of(tooLong(course, step, who, waits, open.getAsDouble()));
    }
    boolean kept = most.isPresent() && most.getAsDouble() * MINUTES_PER_HOUR <= open.getAsDouble();
    return kept ? List.of() : List.of(unbounded(course, step));
  }

  /** From when the first piece of a typical run is glued until the last one is; minutes. */
  private static double firstWaits(Course course, int step) {
    int each = course.at(step).step().minutesEach();
    return (double) (course.pieces() - 1) * each;
  }

  private static OptionalDouble openMinutes(Doing glue) {
    Matcher open = OPEN.matcher(glue.step().step().toLowerCase(Locale.ROOT));
    if (!open.find()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(open.group(1));
    return OptionalDouble.of("h".equals(open.group(2)) ? number * MINUTES_PER_HOUR : number);
  }

  private static Advice tooLong(Course course, int step, String who, double minutes, double open) {
    Doing glue = course.at(step);
    return new Advice(
        course.path(step),
        glue.quoted()
            + ": "
            + who
            + " "
            + Math.round(minutes)
            + " min, and the glue is open for "
            + Math.round(open)
            + " min",
        "Glue that has skinned over does not hold.",
        "Glue and lay piece by piece in one step, or make the run smaller.",
        glue.sure());
  }

  private static Advice unbounded(Course course, int step) {
    return new Advice(
        course.path(step + 1) + ".after.atMostHours",
        "nothing keeps "
            + course.at(step + 1).quoted()
            + " within the open time of "
            + course.at(step).quoted(),
        "Glue that has skinned over does not hold.",
        "Give the open time there as the most wait, or glue and lay in one step.",
        course.at(step).sure());
  }
}
