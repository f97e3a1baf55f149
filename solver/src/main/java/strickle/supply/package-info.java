/**
 * What a plan uses up of every material and when; what to buy for it, in whole packs, by which day;
 * what runs out first, and what begins before it can have come.
 */
package strickle.supply;
