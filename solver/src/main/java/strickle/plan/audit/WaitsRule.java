package strickle.plan.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import strickle.plan.Wait;

/** The waits listed are those the rules put between the tasks; one of no length may be left out. */
final class WaitsRule implements Rule {

  @Override
  public int number() {
    return 0;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    Map<String, List<Gap>> listed = new HashMap<>();
    for (Wait wait : facts.plan().waits()) {
      listed.computeIfAbsent(wait.run(), run -> new ArrayList<>()).add(gap(wait));
    }
    for (Course course : facts.courses()) {
      List<Gap> ofRun = listed.computeIfAbsent(course.run().id(), run -> new ArrayList<>());
      for (Gap due : facts.gaps().all(course)) {
        boolean held = ofRun.remove(due) || due.from() == due.to();
        findings.unless(held, course.where(), "does not list its " + say(facts, due));
      }
    }
    listed.forEach((run, left) -> left.forEach(gap -> surplus(facts, run, gap, findings)));
  }

  private static void surplus(Facts facts, String run, Gap gap, Findings findings) {
    findings.add("run " + run, "lists a " + say(facts, gap) + " that the rules do not ask for");
  }

  private static Gap gap(Wait wait) {
    return new Gap(wait.kind(), ZonedMinutes.minute(wait.from()), ZonedMinutes.minute(wait.to()));
  }

  private static String say(Facts facts, Gap gap) {
    String kind = gap.kind().name().toLowerCase(Locale.ROOT);
    return kind + " from " + facts.time().say(gap.from()) + " to " + facts.time().say(gap.to());
  }
}
