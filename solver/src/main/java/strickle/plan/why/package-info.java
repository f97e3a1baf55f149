/**
 * Here a finished plan is asked why an order is late: what held its last run on the way from pour
 * to ready, and what would free it. Everything is read from the book and the plan's own records; a
 * cure is only offered when moving the order's runs, with all others left in place, proves it.
 */
package strickle.plan.why;
