package strickle.plan.learn;

import java.util.List;
import strickle.plan.Plan;
import strickle.plan.replan.Happening;

/**
 * A plan with what was recorded while it was carried out.
 *
 * @param plan the plan
 * @param happened what has happened
 * @param used what was really weighed out
 */
public record Log(Plan plan, List<Happening> happened, List<Used> used) {

  /** Copies the lists. */
  public Log {
    happened = List.copyOf(happened);
    used = List.copyOf(used);
  }
}
