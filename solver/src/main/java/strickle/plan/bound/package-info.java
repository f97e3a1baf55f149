/**
 * Here live the bounds no plan can beat: how soon so many castings can be ready at best, how late
 * the orders of a week have to be at least, how many minutes of handwork there are at least. Each
 * follows from leaving rules out of a shop, never from a plan, so it holds whatever is planned.
 */
package strickle.plan.bound;
