package strickle.plan.audit;

import strickle.plan.PlanWait;

/**
 * A wait as the rules have it: the least time that has to pass.
 *
 * @param kind what for
 * @param from minute it begins
 * @param to first whole minute at or after its end
 */
record Gap(PlanWait kind, long from, long to) {}
