package strickle.plan.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** What rules 2 and 3 ask alike of a demould (stage 0) and of the steps of the route. */
record StageReading(Facts facts, Rule.Findings findings) {

  /** Every task of this kind is of a run that is planned and of a step its route has. */
  void belong(TaskKind kind) {
    Map<String, Integer> steps = new HashMap<>();
    for (Lot lot : facts.plan().lots()) {
      lot.runs().forEach(run -> steps.putIfAbsent(run.id(), steps(run)));
    }
    for (Stint stint : facts.stints()) {
      if (stint.task().kind() == kind) {
        belongs(stint, steps);
      }
    }
  }

  /** A run of an unknown piece may have any number of steps: that it is unknown is told already. */
  private int steps(Run run) {
    return facts.piece(run.piece()).map(p -> p.route().size()).orElse(Integer.MAX_VALUE);
  }

  private void belongs(Stint stint, Map<String, Integer> steps) {
    Task task = stint.task();
    Integer most = steps.get(task.run().orElseThrow());
    if (most == null) {
      findings.add(stint.where(), "is of run " + task.run().get() + ", which no lot has");
    } else {
      int step = task.step().orElse(0);
      findings.unless(
          step <= most, stint.where(), "is step " + step + " of a route of " + most + " steps");
    }
  }

  /** The stage is planned, and once. */
  void once(Course course, int number) {
    int times = facts.stages(course.run().id(), number).size();
    if (course.isLost() && number > 0) {
      boolean toCome =
          facts.stages(course.run().id(), number).stream().anyMatch(stint -> !stint.isHistory());
      findings.unless(
          times <= 1 && !toCome,
          course.where(),
          "has its " + say(number) + " " + times + " times, though nothing is left of it");
      return;
    }
    findings.unless(
        times == 1, course.where(), "has its " + say(number) + " " + times + " times, not once");
  }

  /** The stage takes its minutes. */
  void minutes(Course course, int number, long minutes) {
    for (Stint stint : facts.stages(course.run().id(), number)) {
      findings.unless(
          stint.minutes() == minutes || stint.isHistory(),
          stint.where(),
          "takes " + stint.minutes() + " minutes; the run needs " + minutes);
    }
  }

  /** The stage starts when the wait before it is over, and not too long after the wait began. */
  void after(Course course, int number, Gap wait, OptionalDouble atMostHours) {
    boolean behindHistory = course.before(number).map(Stint::isHistory).orElse(false);
    // Of a run under way the plan has to say by how much, which another rule reads.
    OptionalDouble most = course.isPoured() ? OptionalDouble.empty() : atMostHours;
    course.stages().get(number).ifPresent(stint -> after(stint, wait, most, behindHistory));
  }

  /** What really happened may have come too soon, but not before what it follows was over. */
  private void after(Stint stint, Gap wait, OptionalDouble atMostHours, boolean behindHistory) {
    String starts = "starts at " + facts.time().say(stint.start());
    findings.unless(
        stint.start() >= (stint.isHistory() ? wait.from() : wait.to()),
        stint.where(),
        starts + ", before its wait is over at " + facts.time().say(wait.to()));
    findings.unless(
        behindHistory || !stint.isHistory(),
        stint.where(),
        "has begun, though the task before it has not");
    atMostHours.ifPresent(
        most ->
            findings.unless(
                WaitEnds.isWithin(wait.from(), stint.start(), most),
                stint.where(),
                starts
                    + ", over "
                    + Say.number(most)
                    + " h after "
                    + facts.time().say(wait.from())));
  }

  private static String say(int number) {
    return number == 0 ? "demould" : "step " + number;
  }
}
