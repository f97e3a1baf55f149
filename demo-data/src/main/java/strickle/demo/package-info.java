/**
 * An invented studio at three sizes ({@link strickle.demo.Demo}) and a generator of studio books by
 * size and seed ({@link strickle.demo.Generator}). The small {@code …Entry} classes let both write
 * a book so that it reads like a catalogue.
 */
package strickle.demo;
