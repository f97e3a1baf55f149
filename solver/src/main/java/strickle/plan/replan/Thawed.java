package strickle.plan.replan;

/**
 * A task that was about to begin and should have kept its person and time.
 *
 * @param task its id
 * @param reason why it could not, a clause
 */
public record Thawed(String task, String reason) {}
