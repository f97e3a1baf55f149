package strickle.plan.audit;

import strickle.plan.Task;

/**
 * A task with its times in minutes since 1970.
 *
 * @param task the task
 * @param start when it first begins
 * @param end when it last ends
 * @param minutes minutes worked
 */
record Stint(Task task, long start, long end, long minutes) {

  static Stint of(Task task) {
    long start = ZonedMinutes.minute(task.start());
    return new Stint(task, start, ZonedMinutes.minute(task.end()), task.minutes());
  }

  /** Whether it is over or somebody is at it: then it is what really happens. */
  boolean isHistory() {
    return task.done() || task.begun();
  }

  String where() {
    return "task " + task.id();
  }
}
