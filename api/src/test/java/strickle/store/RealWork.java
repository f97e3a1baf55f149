package strickle.store;

import java.util.List;
import java.util.function.Consumer;
import strickle.plan.Effort;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Progress;

/** Lays plans out as it is done. */
class RealWork implements PlanWork {
  @Override
  public Running begin(PlanJob job, Consumer<Progress> listener) {
    Planning planning = Planning.of(job.book(), request(job.asked()), listener);
    return new Running() {
      @Override
      public Outcome run() {
        return new Outcome(planning.run(), List.of());
      }

      @Override
      public void stop() {
        planning.stop();
      }
    };
  }

  /** What is asked of the planner. */
  static PlanRequest request(PlanAsked asked) {
    Effort effort = Effort.ofSchedules(asked.schedules().orElseThrow());
    return new PlanRequest(asked.from(), effort, asked.seed());
  }
}
