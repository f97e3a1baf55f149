/**
 * Here live volume, recipe, weigh-out and ballast: how much mix a mould takes, what it is weighed
 * out from, and what holds a floating core down. Nothing here knows of time, people or money.
 */
package strickle.mix;
