/**
 * Here lives what time and the room do to concrete: how fast it sets, cures and dries, and when
 * such a wait is over. Hours and weights in, moments and bands out; nothing here knows of tasks or
 * people.
 */
package strickle.cure;
