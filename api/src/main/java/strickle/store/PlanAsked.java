package strickle.store;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import strickle.plan.replan.Happening;

/**
 * What was asked of the planner, with everything settled that nobody had said.
 *
 * @param from the first moment that may be planned; of a plan laid out anew the present moment
 * @param seconds how long to search; nothing when schedules are given
 * @param schedules how many schedules to look at; nothing when seconds are given
 * @param seed where the search's chance begins
 * @param coverPercent in how many of a hundred cases castings have to bring what is asked for;
 *     nothing for as many castings as do on average
 * @param ordering from when on materials can be ordered, which are waited for then; nothing when
 *     they are not waited for
 * @param rest what is to be known of a plan laid out anew; nothing of one made from the start
 */
public record PlanAsked(
    OffsetDateTime from,
    OptionalLong seconds,
    OptionalLong schedules,
    long seed,
    OptionalDouble coverPercent,
    Optional<OffsetDateTime> ordering,
    Optional<Rest> rest) {

  /**
   * What is to be known of a plan laid out anew.
   *
   * @param frozenUntil what begins before this keeps person and time unless that has become
   *     impossible
   * @param happened what has happened since the present plan was made
   * @param plan the id of the present plan; nothing for the one in use
   */
  public record Rest(OffsetDateTime frozenUntil, List<Happening> happened, Optional<String> plan) {

    /** Takes its own copy of the list. */
    public Rest {
      happened = List.copyOf(happened);
    }
  }
}
