package strickle.plan.audit;

import java.util.List;
import java.util.OptionalDouble;
import strickle.book.Step;
import strickle.plan.TaskKind;

/** Rule 3: every step of the route once, after its wait, by somebody who may. */
final class StepsRule implements Rule {

  @Override
  public int number() {
    return 3;
  }

  @Override
  public void read(Facts facts, Findings findings) {
    StageReading stages = new StageReading(facts, findings);
    stages.belong(TaskKind.STEP);
    for (Course course : facts.courses()) {
      for (int number = 1; number <= course.piece().route().size(); number++) {
        step(facts, course, number, stages);
        by(course, number, findings);
      }
    }
  }

  private static void step(Facts facts, Course course, int number, StageReading stages) {
    Step step = course.step(number);
    long minutes = step.setupMinutes() + course.pieces() * step.minutesEach();
    stages.once(course, number);
    stages.minutes(course, number, minutes);
    OptionalDouble most = step.after().atMostHours();
    facts.gaps().before(course, number).ifPresent(wait -> stages.after(course, number, wait, most));
  }

  private static void by(Course course, int number, Findings findings) {
    List<String> by = course.step(number).by();
    course.stages().get(number).ifPresent(stint -> by(stint, by, findings));
  }

  private static void by(Stint stint, List<String> by, Findings findings) {
    String person = stint.task().person();
    findings.unless(
        by.isEmpty() || by.contains(person) || stint.isHistory(),
        stint.where(),
        "is done by " + person + ", and only " + String.join(", ", by) + " may");
  }
}
