package strickle.plan.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strickle.book.After;
import strickle.book.WaitKind;
import strickle.plan.PlanWait;

/** The waits that the rules put between the tasks of a run, as far as its tasks are planned. */
final class Gaps {

  private final WaitEnds ends;

  Gaps(WaitEnds ends) {
    this.ends = ends;
  }

  /** The set: it begins when the pour ends less washing up. */
  Optional<Gap> set(Course course) {
    return course.pour().map(pour -> set(course, pour.end() - course.mix().washMinutes()));
  }

  private Gap set(Course course, long from) {
    return new Gap(PlanWait.SET, from, ends.afterAge(from, course.mould().setHours()));
  }

  /** The wait before a step, numbered from 1: it begins at the end of the task before. */
  Optional<Gap> before(Course course, int number) {
    After after = course.step(number).after();
    if (course.isLost() && course.stages().get(number).isEmpty()) {
      return Optional.empty();
    }
    return course.stages().get(number - 1).map(stint -> before(after, stint.end()));
  }

  private Gap before(After after, long from) {
    long to =
        after.kind() == WaitKind.CURE
            ? ends.afterAge(from, after.hours())
            : ends.afterHours(from, after.hours());
    return new Gap(planned(after.kind()), from, to);
  }

  /** The drying after the last task; when it is over the run is ready. */
  Optional<Gap> finalDry(Course course) {
    return course.isLost()
        ? Optional.empty()
        : course.last().map(last -> finalDry(course, last.end()));
  }

  private Gap finalDry(Course course, long from) {
    return new Gap(PlanWait.DRY, from, ends.afterHours(from, course.piece().finalDryHours()));
  }

  /** Every wait of a run, in order. */
  List<Gap> all(Course course) {
    List<Gap> all = new ArrayList<>();
    set(course).ifPresent(all::add);
    for (int number = 1; number <= course.piece().route().size(); number++) {
      before(course, number).ifPresent(all::add);
    }
    finalDry(course).ifPresent(all::add);
    return List.copyOf(all);
  }

  private static PlanWait planned(WaitKind kind) {
    return switch (kind) {
      case CURE -> PlanWait.CURE;
      case DRY -> PlanWait.DRY;
      case REST -> PlanWait.REST;
    };
  }
}
