/**
 * Here a new order is tried on a plan before it is promised: the earliest date that makes nobody
 * later, the earliest at all and who would slip. Every date is that of a whole plan with the new
 * order in it.
 */
package strickle.plan.promise;
