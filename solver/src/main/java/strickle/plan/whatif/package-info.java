/**
 * What would happen if the studio had more of something: changes of a book, which of them are worth
 * trying on a plan, and what comes of each. Every plan tried starts from the present one, and is
 * held against what more planning alone would give.
 */
package strickle.plan.whatif;
