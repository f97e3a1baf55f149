package strickle.plan.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import strickle.plan.History;
import strickle.plan.Task;

/**
 * What a plan says to have happened: what is done is over by now, what has begun is not, only runs
 * that are poured have losses, and every most-wait that was exceeded is told, and by how much.
 */
final class HistoryRule implements Rule {

  private static final double TOLERANCE_MINUTES = WaitEnds.TOLERANCE_HOURS * 60;

  @Override
  public int number() {
    return 0;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    facts.stints().stream().filter(Stint::isHistory).forEach(one -> over(facts, one, findings));
    for (Course course : facts.courses()) {
      int lost = course.run().scrapped();
      findings.unless(
          lost <= course.pieces(),
          course.where(),
          "has lost " + lost + " pieces of " + course.pieces());
      findings.unless(
          lost == 0 || course.isPoured(), course.where(), "has losses, but is not poured");
    }
    exceeded(facts, findings);
  }

  private static void over(Facts facts, Stint stint, Findings findings) {
    Task task = stint.task();
    if (facts.history().isEmpty()) {
      findings.add(stint.where(), "has happened, but the plan does not say what time it is now");
      return;
    }
    long now = ZonedMinutes.minute(facts.history().get().now());
    boolean past = task.done() ? stint.end() <= now : stint.start() <= now && stint.end() > now;
    String what = task.done() ? "is said to be done" : "is said to have begun and not to be done";
    findings.unless(past, stint.where(), what + " by " + facts.time().say(now) + ", but is not");
  }

  private static void exceeded(Facts facts, Findings findings) {
    Map<String, Long> told = new HashMap<>();
    List<History.Exceeded> all = facts.history().map(History::exceeded).orElse(List.of());
    for (History.Exceeded one : all) {
      boolean once = told.put(one.task(), one.minutes()) == null;
      findings.unless(once, "task " + one.task(), "is said to exceed its most-wait more than once");
    }
    for (Course course : facts.courses()) {
      for (int stage = 0; stage <= course.piece().route().size(); stage++) {
        exceeded(course, stage, told, findings);
      }
    }
    told.forEach(
        (task, minutes) ->
            findings.add("task " + task, "is said to exceed a most-wait, but does not"));
  }

  private static void exceeded(
      Course course, int stage, Map<String, Long> told, Findings findings) {
    OptionalDouble most =
        stage == 0 ? course.mould().setAtMostHours() : course.step(stage).after().atMostHours();
    if (most.isEmpty() || !course.isPoured() || course.stages().get(stage).isEmpty()) {
      return;
    }
    Stint stint = course.stages().get(stage).get();
    long wash = stage == 0 ? course.mix().washMinutes() : 0;
    long from = course.before(stage).map(before -> before.end() - wash).orElse(stint.start());
    long over =
        stint.start() - from - (long) Math.floor(most.getAsDouble() * 60 + TOLERANCE_MINUTES);
    if (over > 0) {
      Long said = told.remove(stint.task().id());
      findings.unless(
          said != null && said == over,
          stint.where(),
          "exceeds its most-wait by " + over + " minutes, and the plan does not say so");
    }
  }
}
