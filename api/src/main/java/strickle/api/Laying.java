package strickle.api;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import strickle.book.Book;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Progress;
import strickle.plan.Replanning;
import strickle.plan.Task;
import strickle.plan.audit.Audit;
import strickle.plan.audit.Finding;
import strickle.plan.replan.ReplanRequest;
import strickle.plan.replan.Replanned;
import strickle.store.PlanAsked;
import strickle.store.PlanJob;
import strickle.store.PlanWork;
import strickle.supply.Shopping;

/** Lays out the plans that a queue takes; none that breaks a rule leaves it. */
final class Laying implements PlanWork {

  @Override
  public Running begin(PlanJob job, Consumer<Progress> listener) {
    return job.present().isPresent()
        ? replanning(job, job.present().get())
        : planning(job, listener);
  }

  private static Running planning(PlanJob job, Consumer<Progress> listener) {
    Planning planning = Planning.of(job.book(), request(job.asked()), listener);
    return new Running() {
      @Override
      public Outcome run() {
        Plan plan = audited(job.book(), planning.run());
        job.asked().ordering().ifPresent(at -> mustWait(job.book(), plan, at));
        return new Outcome(plan, List.of());
      }

      @Override
      public void stop() {
        planning.stop();
      }
    };
  }

  private static Running replanning(PlanJob job, Plan present) {
    Replanning replanning = Replanning.of(job.book(), present, replanRequest(job.asked()));
    return new Running() {
      @Override
      public Outcome run() {
        Replanned replanned = replanning.run();
        return new Outcome(audited(job.book(), replanned.plan()), replanned.thawed());
      }

      @Override
      public void stop() {
        replanning.stop();
      }
    };
  }

  // As the shopping list reads it, which shares nothing with the planner.
  static void mustWait(Book book, Plan plan, OffsetDateTime ordering) {
    Set<String> tasks = plan.tasks().stream().map(Task::id).collect(Collectors.toSet());
    Shopping.of(book, plan, ordering).tooEarly().stream()
        .filter(early -> tasks.contains(early.what()))
        .findFirst()
        .ifPresent(
            early -> {
              throw new IllegalStateException("the plan does not wait for materials: " + early);
            });
  }

  /** What was asked, for a plan from the start. */
  static PlanRequest request(PlanAsked asked) {
    PlanRequest request =
        new PlanRequest(asked.from(), effort(asked), asked.seed()).covering(asked.coverPercent());
    return asked.ordering().map(request::ordering).orElse(request);
  }

  /** What was asked, for one that is laid out anew. */
  static ReplanRequest replanRequest(PlanAsked asked) {
    PlanAsked.Rest rest = asked.rest().orElseThrow();
    return new ReplanRequest(
        asked.from(), rest.frozenUntil(), rest.happened(), effort(asked), asked.seed());
  }

  private static Effort effort(PlanAsked asked) {
    return asked.schedules().isPresent()
        ? Effort.ofSchedules(asked.schedules().getAsLong())
        : Effort.ofTime(Duration.ofSeconds(asked.seconds().orElseThrow()));
  }

  /**
   * Lets a valid plan through.
   *
   * @throws IllegalStateException when it breaks a rule: a fault of the program
   */
  static Plan audited(Book book, Plan plan) {
    List<Finding> findings = Audit.of(book, plan);
    if (!findings.isEmpty()) {
      throw new IllegalStateException("its own check refuses the plan: " + findings.get(0));
    }
    return plan;
  }
}
