/**
 * Here lives what is said to a plan under way and what it answers: what has happened in the studio
 * since it was made, and, once it is laid out anew, what has moved. It compares plans and lays out
 * nothing itself.
 */
package strickle.plan.replan;
