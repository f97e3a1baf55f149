/**
 * Here lives the audit: a second reading of the rules of a plan, written from the page that states
 * them, that knows nothing of how plans are made. It has calendars, clocks and sums of its own, one
 * class to a rule, and tells everything it finds wrong.
 */
package strickle.plan.audit;
