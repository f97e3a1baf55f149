/**
 * The measuring bench: reads published scheduling problems into shops, lets the engine schedule
 * them, and tells how far from the best known it ends. It measures only; no test of the engine
 * depends on it.
 */
package strickle.bench;
