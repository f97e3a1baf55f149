/**
 * From book to shop to plan: here a studio book is turned into a shop that can be scheduled, and
 * the schedule back into a plan in the maker's words, with its reasons. The records of a plan live
 * here too; they check what one record alone can know, while {@link strickle.plan.audit} checks a
 * plan against its book.
 */
package strickle.plan;
