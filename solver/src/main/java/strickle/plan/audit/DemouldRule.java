package strickle.plan.audit;

import java.util.OptionalDouble;
import strickle.plan.TaskKind;

/** Rule 2: one demould for each run, neither before the set is over nor too long after it began. */
final class DemouldRule implements Rule {

  @Override
  public int number() {
    return 2;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    StageReading stages = new StageReading(facts, findings);
    stages.belong(TaskKind.DEMOULD);
    for (Course course : facts.courses()) {
      long minutes = (long) course.run().castings() * course.mould().demouldMinutes();
      stages.once(course, 0);
      stages.minutes(course, 0, minutes);
      OptionalDouble most = course.mould().setAtMostHours();
      facts.gaps().set(course).ifPresent(set -> stages.after(course, 0, set, most));
    }
  }
}
