/**
 * Here lives what time and the room do to concrete: how fast it sets and cures at a temperature,
 * and when such a wait is over. Hours in, moments out; nothing here knows of tasks or people.
 */
package strickle.cure;
