package strickle.plan.audit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strickle.plan.Ready;
import strickle.plan.Run;

/** Rule 7: each run is ready when its final drying is over, and the plan says so once. */
final class ReadyRule implements Rule {

  @Override
  public int number() {
    return 7;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Map<String, List<Ready>> stated =
        facts.plan().ready().stream().collect(Collectors.groupingBy(Ready::run));
    Set<String> runs =
        facts.plan().lots().stream()
            .flatMap(lot -> lot.runs().stream())
            .map(Run::id)
            .collect(Collectors.toSet());
    Set<String> lost =
        facts.courses().stream()
            .filter(Course::isLost)
            .map(course -> course.run().id())
            .collect(Collectors.toSet());
    for (String run : runs) {
      int times = stated.getOrDefault(run, List.of()).size();
      int due = lost.contains(run) ? 0 : 1;
      String right = due == 1 ? ", not once" : ", though nothing is left of it";
      findings.unless(times == due, "run " + run, "is listed as ready " + times + " times" + right);
    }
    for (Ready ready : facts.plan().ready()) {
      boolean known = runs.contains(ready.run());
      findings.unless(known, "run " + ready.run(), "is listed as ready, but no lot has it");
    }
    facts.courses().forEach(course -> at(facts, course, stated, findings));
  }

  private static void at(
      Facts facts, Course course, Map<String, List<Ready>> stated, Findings findings) {
    facts
        .gaps()
        .finalDry(course)
        .ifPresent(
            dry -> {
              for (Ready ready : stated.getOrDefault(course.run().id(), List.of())) {
                findings.unless(
                    ZonedMinutes.minute(ready.at()) == dry.to(),
                    course.where(),
                    "is listed as ready at "
                        + ready.at()
                        + ", but is at "
                        + facts.time().say(dry.to()));
              }
            });
  }
}
